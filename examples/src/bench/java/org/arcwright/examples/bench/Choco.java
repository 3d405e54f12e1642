package org.arcwright.examples.bench;

import java.util.List;
import org.arcwright.compose.instance.Instance;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;

/** Solves instances with Choco, a general solver that knows nothing of agendas. */
final class Choco {
  private Choco() {}

  /** The cheapest list of items, within so many seconds. */
  static Peer.Answer solve(Instance instance, double seconds) {
    ChocoModel model = new ChocoModel(instance);
    Solver solver = model.model().getSolver();
    solver.setSearch(model.inOrder());
    solver.limitTime((long) (seconds * 1000));
    long begin = System.nanoTime();
    Solution best = null;
    while (solver.solve()) {
      best = new Solution(model.model()).record();
    }
    double took = (System.nanoTime() - begin) / 1e9;
    boolean proven = !solver.isStopCriterionMet();
    return best == null
        ? new Peer.Answer(proven, 0, List.of(), took)
        : new Peer.Answer(proven, best.getIntVal(model.cost()), model.items(best), took);
  }
}
