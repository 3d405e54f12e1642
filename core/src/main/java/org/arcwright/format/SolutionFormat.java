package org.arcwright.format;

import java.util.Locale;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;

/**
 * Answers to the composition problem in JSON:
 *
 * <pre>{@code
 * {"status": "optimal", "cost": 120, "bound": 120, "items": [
 *   {"id": "two-objects", "phase": 0, "start": 0, "length": 15},
 *   {"break": true, "start": 15, "length": 10}]}
 * }</pre>
 *
 * <p>The status is {@code optimal}, {@code feasible}, {@code infeasible} or {@code stopped}; phases
 * count from 0, times are minutes. There is a {@code cost} with items only, and a {@code bound}
 * unless nothing fits.
 */
public final class SolutionFormat {
  private SolutionFormat() {}

  /** The solution in JSON, an item a line. */
  public static String write(Solution solution) {
    Branch branch = new Branch().put("status", solution.status().name().toLowerCase(Locale.ROOT));
    if (solution.status() == Status.OPTIMAL || solution.status() == Status.FEASIBLE) {
      branch.put("cost", solution.cost());
    }
    if (solution.status() != Status.INFEASIBLE) {
      branch.put("bound", solution.bound());
    }
    return JsonWriter.write(
        branch.put("items", Branch.list(solution.items(), SolutionFormat::tree)).end());
  }

  private static Node tree(Item item) {
    Branch branch = new Branch();
    if (item instanceof Item.Activity activity) {
      branch.put("id", activity.id()).put("phase", activity.phase());
    } else {
      branch.put("break", true);
    }
    return branch.put("start", item.start()).put("length", item.length()).end();
  }
}
