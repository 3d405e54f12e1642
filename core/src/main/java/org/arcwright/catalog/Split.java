package org.arcwright.catalog;

/**
 * People dealt out into groups as evenly as can be: no two groups differ by more than one.
 *
 * @param people how many, 1 or more
 * @param groups how many groups, 1 to {@code people}
 */
public record Split(int people, int groups) {
  /** Refuses more groups than people. */
  public Split {
    Checks.range("people", people, 1, 1000);
    Checks.range("groups", groups, 1, people);
  }

  /** In twos; an odd person joins a pair. */
  public static Split pairs(int people) {
    return new Split(people, Math.max(1, people / 2));
  }

  /** Size of the smaller groups. */
  public int smaller() {
    return people / groups;
  }

  /** How many groups have one person more than {@link #smaller()}. */
  public int larger() {
    return people % groups;
  }
}
