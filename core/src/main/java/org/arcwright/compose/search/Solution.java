package org.arcwright.compose.search;

import java.util.List;
import org.arcwright.compose.instance.Item;

/**
 * What a search found.
 *
 * @param status how it ended
 * @param cost of the items; 0 without items
 * @param tie breaks ties among equal costs; 0 without items
 * @param bound no solution costs less; meaningless when infeasible
 * @param items in order; empty without a solution
 * @param labels steps taken
 */
public record Solution(
    Status status, long cost, long tie, long bound, List<Item> items, long labels) {
  /** How a search ended. */
  public enum Status {
    /** The items are proven cheapest. */
    OPTIMAL,
    /** The items fit; the limit ended before the proof. */
    FEASIBLE,
    /** Nothing fits; proven. */
    INFEASIBLE,
    /** The limit ended before anything was found or ruled out. */
    STOPPED
  }

  /** Copies the list. */
  public Solution {
    items = List.copyOf(items);
  }
}
