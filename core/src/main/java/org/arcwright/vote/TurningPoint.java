package org.arcwright.vote;

import java.util.List;

/**
 * The weight of one criterion at which other options draw level with the winner; past it one of
 * them wins. Compare Triantaphyllou and Sánchez, A sensitivity analysis approach for some
 * deterministic multi-criteria decision making methods (1997).
 *
 * @param criterion the criterion whose weight changes
 * @param share its share of all weights as they stand, 0 to 1
 * @param shareAt its share at the turning point; the others keep their proportions
 * @param weightAt its weight at the turning point if the others are left as written
 * @param challengers those level with the winner there, in the order of the options
 */
public record TurningPoint(
    String criterion,
    Fraction share,
    Fraction shareAt,
    Fraction weightAt,
    List<String> challengers) {
  /** Copies the list. */
  public TurningPoint {
    challengers = List.copyOf(challengers);
  }

  /** By how much the share has to change; negative for a fall. */
  public Fraction change() {
    return shareAt.minus(share);
  }
}
