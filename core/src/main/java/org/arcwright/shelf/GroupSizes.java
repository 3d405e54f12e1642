package org.arcwright.shelf;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.arcwright.catalog.SizeRange;

/** Whether all numbers of people can be dealt out into small groups. */
public final class GroupSizes {
  private GroupSizes() {}

  /**
   * Which numbers cannot, and what would be right; nothing if all can.
   *
   * @param people the numbers that an exercise serves
   * @param group the size of a small group
   */
  public static Optional<String> problem(SizeRange people, SizeRange group) {
    List<Integer> left =
        IntStream.rangeClosed(people.min(), people.max())
            .filter(count -> !group.splits(count))
            .boxed()
            .toList();
    if (left.isEmpty()) {
      return Optional.empty();
    }
    int enough = 2 * group.min() - 1;
    return Optional.of(
        Ranges.of(left)
            + (left.equals(List.of(1)) ? " person" : " people")
            + " cannot be split so; "
            + (group.max() < enough
                ? "a max of " + enough + " splits any number from " + group.min() + " on"
                : "start the range at " + people.min() + ", or raise people.min"));
  }
}
