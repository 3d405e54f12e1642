package org.arcwright.standin;

import java.util.List;
import org.arcwright.catalog.Checks;

/**
 * Whether an agenda goes on when a tool fails.
 *
 * @param tools ids of those asked about, which fail one at a time
 * @param stops pairs of an exercise in it and a tool of these that it leans on
 * @param bare places of the exercises without a stand-in among its items, in order; empty if all
 *     have one
 * @param leftOut how many exercises were left out for that
 * @param dearer points that it costs more than the best agenda without this wish can cost; no
 *     agenda that withstands is better than this one by more than that
 * @param reasons where something is bare, what stands in the way of an agenda that does without the
 *     tools, in a facilitator's words
 * @param complete whether the budget lasted to the end
 */
public record ToolVerdict(
    List<String> tools,
    int stops,
    List<Integer> bare,
    int leftOut,
    long dearer,
    List<String> reasons,
    boolean complete) {
  /** Copies the lists. */
  public ToolVerdict {
    tools = List.copyOf(Checks.ids("tools", tools));
    Checks.range("stops", stops, 0, Integer.MAX_VALUE);
    bare = List.copyOf(bare);
    Checks.range("leftOut", leftOut, 0, Integer.MAX_VALUE);
    reasons = List.copyOf(reasons);
  }

  /** Whether every exercise that leans on one of the tools has a stand-in. */
  public boolean reached() {
    return bare.isEmpty();
  }
}
