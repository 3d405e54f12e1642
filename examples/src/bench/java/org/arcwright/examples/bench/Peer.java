package org.arcwright.examples.bench;

import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.CpSat;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;

/** General solvers that are given the same instances. */
enum Peer {
  /** OR-Tools CP-SAT (Perron, Didier and Gay 2023), 2 workers. */
  CP_SAT("CP-SAT") {
    @Override
    Answer solve(Instance instance, double seconds) {
      CpSat.Answer answer = CpSat.solve(instance, seconds);
      boolean proven =
          answer.status() == CpSolverStatus.OPTIMAL
              || answer.status() == CpSolverStatus.INFEASIBLE;
      return new Answer(proven, answer.cost(), answer.items(), answer.seconds());
    }
  },

  /** Choco (Prud'homme and Fages 2022), one worker. */
  CHOCO("Choco") {
    @Override
    Answer solve(Instance instance, double seconds) {
      return Choco.solve(instance, seconds);
    }
  };

  /**
   * What a solver came to.
   *
   * @param proven whether the items are cheapest, or without items, whether nothing fits
   * @param cost of the items; 0 without items
   * @param items in order; empty if none were found
   * @param seconds that the solver took, without making the model
   */
  record Answer(boolean proven, long cost, List<Item> items, double seconds) {
    @Override
    public String toString() {
      String found = items.isEmpty() ? "nothing found" : String.valueOf(cost);
      return proven ? "proves " + found : found + ", no proof";
    }
  }

  private static final int TRIALS = 12;
  private static final int MINUTE = 60;

  private final String title;

  Peer(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  /** Its answer within so many seconds. */
  abstract Answer solve(Instance instance, double seconds);

  /**
   * Refuses to go on if a solver and the search differ on tiny instances: a peer that solves
   * another problem is none.
   */
  void agree() {
    for (long seed = 0; seed < TRIALS; seed++) {
      Instance instance = Instances.tiny(seed);
      Solution solution = Search.solve(instance, Limit.NONE);
      Answer answer = solve(instance, MINUTE);
      if (answer.cost != solution.cost()
          || answer.items.isEmpty() != solution.items().isEmpty()
          || !(answer.items.isEmpty() || Checker.check(instance, answer.items).feasible())) {
        throw new IllegalStateException(title + " and the search differ on tiny instance " + seed);
      }
    }
  }
}
