package org.arcwright.standin;

import java.util.List;
import org.arcwright.catalog.Checks;

/**
 * What stops when a tool fails.
 *
 * @param tool its id
 * @param swaps one for each exercise that leans on it, in the agenda's order; no exercise stands in
 *     twice
 */
public record ToolLoss(String tool, List<Swap> swaps) {
  /** Copies the list. */
  public ToolLoss {
    Checks.id("tool", tool);
    swaps = List.copyOf(swaps);
  }

  /** How many of them have a stand-in. */
  public int covered() {
    return (int) swaps.stream().filter(swap -> swap.standIn().isPresent()).count();
  }
}
