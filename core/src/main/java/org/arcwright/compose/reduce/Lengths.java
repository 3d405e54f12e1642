package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Minutes;

/**
 * The lengths that one exercise may have, in minutes on the grid, and what each costs.
 *
 * @param minutes ascending; empty if even the shortest goes over the limit
 * @param costs one for each
 * @param shortest the least it takes, whether or not that is within the limit
 */
record Lengths(List<Integer> minutes, List<Integer> costs, int shortest) {
  /**
   * All multiples of the grid from {@code range.min} to {@code range.max}, or the next above if
   * there is none between; none over {@code longest}. The multiple nearest to the typical length,
   * the longer on ties, counts as usual and costs nothing, so that no exercise is preferred because
   * its minutes happen to be round; nor does it cost to be no shorter than the grid allows.
   */
  static Lengths of(Minutes range, int grid, int longest) {
    long cell = grid * 60L;
    int first = (int) ((range.min().toSeconds() + cell - 1) / cell) * grid;
    int last = Math.max(first, (int) (range.max().toSeconds() / cell) * grid);
    int usual = (int) ((range.typical().toSeconds() + cell / 2) / cell) * grid;
    usual = Math.max(first, usual);
    List<Integer> minutes = new ArrayList<>();
    List<Integer> costs = new ArrayList<>();
    for (int length = first; length <= Math.min(last, longest); length += grid) {
      minutes.add(length);
      costs.add(cost(length - usual));
    }
    return new Lengths(minutes, costs, first);
  }

  private static int cost(int overUsual) {
    return overUsual < 0
        ? -overUsual * ExchangeRates.SQUEEZED
        : overUsual * ExchangeRates.DRAWN_OUT;
  }
}
