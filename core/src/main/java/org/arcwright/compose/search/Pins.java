package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;

/** Which candidates must start when, in cells. */
final class Pins {
  /** For each candidate the cell at which it must start, or -1. */
  final int[] of;

  /** The candidate that must start at a cell, or -1. */
  final int[] at;

  /** The next pinned start after each cell; nothing may last beyond it. */
  final int[] next;

  /** The last pinned start, or -1. */
  final int last;

  private Pins(int[] of, int[] at, int[] next) {
    this.of = of;
    this.at = at;
    this.next = next;
    this.last = Arrays.stream(of).max().orElse(-1);
  }

  /**
   * The pins, or nothing if they cannot hold together: one names no candidate, or starts too late,
   * or two are in each other's way.
   *
   * @param numbers of candidates, by id
   */
  static Optional<Pins> of(Instance instance, Map<String, Integer> numbers) {
    int cells = instance.cells();
    int[] of = new int[instance.candidates().size()];
    int[] at = new int[cells + 1];
    Arrays.fill(of, -1);
    Arrays.fill(at, -1);
    for (Instance.Pin pin : instance.pins()) {
      Integer number = numbers.get(pin.id());
      int start = pin.at() / instance.grid();
      if (number == null
          || start >= cells
          || (of[number] >= 0 && of[number] != start)
          || (at[start] >= 0 && at[start] != number)) {
        return Optional.empty();
      }
      of[number] = start;
      at[start] = number;
    }
    int[] next = new int[cells + 1];
    int soonest = Integer.MAX_VALUE;
    for (int t = cells; t >= 0; t--) {
      next[t] = soonest;
      if (at[t] >= 0) {
        if (t + shortest(instance, at[t]) > soonest) {
          return Optional.empty();
        }
        soonest = t;
      }
    }
    return Optional.of(new Pins(of, at, next));
  }

  private static int shortest(Instance instance, int candidate) {
    return instance.candidates().get(candidate).lengths().get(0) / instance.grid();
  }
}
