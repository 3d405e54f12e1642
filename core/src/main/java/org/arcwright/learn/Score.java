package org.arcwright.learn;

/**
 * How well logs predict each other: each is held out in turn, and the time of each of its exercises
 * is predicted from all others.
 *
 * @param predictions how many
 * @param before by how many minutes the catalog as it is was off, on average
 * @param after by how many what was learnt from the others was off
 */
public record Score(int predictions, double before, double after) {
  /** Whether what was learnt predicts better. */
  public boolean better() {
    return after < before;
  }

  /** By how many per cent the error is less; negative if it is more. */
  public long lessPercent() {
    return before == 0 ? 0 : Math.round(100 * (before - after) / before);
  }
}
