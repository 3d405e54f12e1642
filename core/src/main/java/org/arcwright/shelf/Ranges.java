package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.List;

/** Numbers in few words. */
final class Ranges {
  private static final int MOST = 4;

  private Ranges() {}

  /** Ascending numbers as ranges: {@code 6, 7 and 11-13}; of many the first few. */
  static String of(List<Integer> numbers) {
    List<String> ranges = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        add(ranges, numbers.get(from), numbers.get(i - 1));
        from = i;
      }
    }
    if (ranges.size() > MOST) {
      return String.join(", ", ranges.subList(0, MOST)) + " and more";
    }
    int last = ranges.size() - 1;
    return last == 0
        ? ranges.get(0)
        : String.join(", ", ranges.subList(0, last)) + " and " + ranges.get(last);
  }

  private static void add(List<String> ranges, int from, int to) {
    if (to <= from + 1) {
      ranges.add(String.valueOf(from));
    }
    if (to == from + 1) {
      ranges.add(String.valueOf(to));
    } else if (to > from) {
      ranges.add(from + "-" + to);
    }
  }
}
