package org.arcwright.compose.search;

import java.util.List;
import java.util.Optional;

/**
 * Options, each the cheapest among those that share little enough with every one before it.
 *
 * @param solutions in order, the first as {@link Search} finds it; the costs ascend
 * @param end why there are no more
 * @param next the cheapest one more that would cost too much, if one is known
 * @param labels steps taken
 */
public record OptionList(List<Solution> solutions, End end, Optional<Solution> next, long labels) {
  /** Why there are no more. */
  public enum End {
    /** There are as many as were asked for. */
    ENOUGH,
    /** Nothing else shares little enough, whatever it costs; proven. */
    NONE_LEFT,
    /** Whatever else shares little enough costs too much; proven. */
    TOO_DEAR,
    /** The limit ended the search. */
    STOPPED
  }

  /** Copies the list. */
  public OptionList {
    solutions = List.copyOf(solutions);
  }
}
