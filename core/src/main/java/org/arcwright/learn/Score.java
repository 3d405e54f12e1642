package org.arcwright.learn;

import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * How well logs predict each other: each is held out in turn, and the time of each of its exercises
 * is predicted from all others. Minutes are kept to four decimals.
 *
 * @param predictions how many
 * @param before by how many minutes the catalog as it is was off, on average
 * @param after by how many what was learnt from the others was off
 */
public record Score(int predictions, double before, double after) {
  private static final double DECIMALS = 10_000;

  /** Refuses negative figures. */
  public Score {
    Checks.range("predictions", predictions, 0, Integer.MAX_VALUE);
    before = Math.round(DECIMALS * before) / DECIMALS;
    after = Math.round(DECIMALS * after) / DECIMALS;
    if (!(before >= 0 && after >= 0)) {
      throw new InvalidValueException("after", after, "0 minutes or more are right");
    }
  }

  /** Whether what was learnt predicts better. */
  public boolean better() {
    return after < before;
  }

  /** By how many per cent the error is less; negative if it is more. */
  public long lessPercent() {
    return before == 0 ? 0 : Math.round(100 * (before - after) / before);
  }
}
