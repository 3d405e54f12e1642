package org.arcwright.compose.search;

import java.util.List;
import org.arcwright.compose.instance.Item;

/**
 * Hears how a search goes on, on the searching thread, which waits until it returns. Between two
 * calls incumbents only get cheaper and bounds only rise; what it throws ends the search and goes
 * on to the caller.
 */
public interface Listener {
  /** Hears nothing. */
  Listener NONE = new Listener() {};

  /**
   * A solution that is cheaper than any before it.
   *
   * @param cost of the items
   * @param items in order; they fit
   */
  default void incumbent(long cost, List<Item> items) {}

  /**
   * A higher bound than any before it.
   *
   * @param cost no solution costs less
   */
  default void bound(long cost) {}
}
