package org.arcwright.compose.explain;

import java.util.List;

/**
 * Why nothing fits, and what to do about it.
 *
 * @param conflicts each clashes by itself; one, or several that have no wish in common where no
 *     single wish is to blame. None if the budget ended first
 * @param waysOut each lets an agenda be made, the one that gives up least first
 * @param complete whether every way out with as few changes was looked for, or one if more than two
 *     changes are needed; false if the budget ended first
 */
public record Clash(List<Conflict> conflicts, List<WayOut> waysOut, boolean complete) {
  /** Copies the lists. */
  public Clash {
    conflicts = List.copyOf(conflicts);
    waysOut = List.copyOf(waysOut);
  }

  /**
   * Wishes that cannot be had together, even if the brief's other wishes are given up.
   *
   * @param wishes which; none if no agenda can be made whatever is given up, for the goal, the mode
   *     and the catalog do not go together
   * @param smallest whether it is proven that the others can be had together once any one of them
   *     is given up
   */
  public record Conflict(List<Asked> wishes, boolean smallest) {
    /** Copies the list. */
    public Conflict {
      wishes = List.copyOf(wishes);
    }
  }

  /**
   * A wish, and how a facilitator says it.
   *
   * @param wish it
   * @param text in words, such as "3 h in all, breaks and buffer included"
   */
  public record Asked(Wish wish, String text) {}

  /** Whether taking away any one wish of the only conflict is enough. */
  public boolean anyOneIsEnough() {
    return conflicts.size() == 1
        && conflicts.get(0).smallest()
        && conflicts.get(0).wishes().stream()
            .allMatch(
                asked ->
                    waysOut.stream()
                        .anyMatch(
                            way ->
                                way.loosenings().size() == 1
                                    && way.loosenings().get(0).wish().equals(asked.wish())));
  }
}
