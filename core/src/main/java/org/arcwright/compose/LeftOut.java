package org.arcwright.compose;

/**
 * An exercise that the brief does not allow, and why.
 *
 * @param exercise its id
 * @param reason in words, such as "needs what is not at hand: breakout rooms"
 */
public record LeftOut(String exercise, String reason) {
  /** What the reason says before a colon: the same for all that are left out for one cause. */
  public String cause() {
    int colon = reason.indexOf(": ");
    return colon < 0 ? reason : reason.substring(0, colon);
  }
}
