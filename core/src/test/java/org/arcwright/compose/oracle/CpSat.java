package org.arcwright.compose.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;

/**
 * Solves middling instances with OR-Tools CP-SAT (Perron, Didier and Gay 2023), a general solver
 * that knows nothing of agendas. See {@link CpSatModel} for the model.
 */
public final class CpSat {
  private static final int WORKERS = 2;

  /**
   * What the solver found.
   *
   * @param status OPTIMAL, FEASIBLE, INFEASIBLE or UNKNOWN
   * @param cost of the items, as the model counts it; 0 without items
   * @param bound no list that fits costs less; meaningless when infeasible
   * @param items in order; empty if none were found
   * @param seconds that the solver took, without making the model
   */
  public record Answer(
      CpSolverStatus status, long cost, long bound, List<Item> items, double seconds) {
    /** Whether items were found. */
    public boolean found() {
      return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }
  }

  private CpSat() {}

  /** The cheapest list of items, within so many seconds. */
  public static Answer solve(Instance instance, double seconds) {
    Loader.loadNativeLibraries();
    CpSatModel model = new CpSatModel(instance);
    model.minimizeCost();
    return solve(model, seconds);
  }

  /**
   * The cheapest list of items that has no more of each earlier list's exercises than may come
   * again.
   *
   * @param most how many exercises of each earlier list
   */
  public static Answer option(
      Instance instance, List<List<Item>> earlier, List<Integer> most, double seconds) {
    Loader.loadNativeLibraries();
    CpSatModel model = new CpSatModel(instance);
    for (int i = 0; i < most.size(); i++) {
      model.share(earlier.get(i), most.get(i));
    }
    model.minimizeCost();
    return solve(model, seconds);
  }

  /** A list of least tie among those that cost exactly this; its cost and bound are ties. */
  public static Answer leastTie(Instance instance, long cost, double seconds) {
    Loader.loadNativeLibraries();
    CpSatModel model = new CpSatModel(instance);
    model.minimizeTieAt(cost);
    return solve(model, seconds);
  }

  private static Answer solve(CpSatModel model, double seconds) {
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setNumWorkers(WORKERS)
        .setRandomSeed(1)
        .setMaxTimeInSeconds(seconds)
        .setRelativeGapLimit(0);
    CpSolverStatus status = solver.solve(model.model());
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return new Answer(status, 0, 0, List.of(), solver.wallTime());
    }
    return new Answer(
        status,
        Math.round(solver.objectiveValue()),
        (long) Math.ceil(solver.bestObjectiveBound() - 1e-6),
        model.items(solver),
        solver.wallTime());
  }
}
