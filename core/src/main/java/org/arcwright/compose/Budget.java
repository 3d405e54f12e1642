package org.arcwright.compose;

import java.time.Duration;
import org.arcwright.catalog.InvalidValueException;

/**
 * How much work an answer may cost. The labels make a run repeatable, the time keeps it polite; the
 * first to run out ends the search.
 *
 * @param labels most search steps, over 0
 * @param time most time, over zero
 */
public record Budget(long labels, Duration time) {
  /** Enough for any day that people would sit through: 200 million labels, 10 seconds. */
  public static final Budget USUAL = new Budget(200_000_000, Duration.ofSeconds(10));

  /** Refuses an empty budget. */
  public Budget {
    if (labels < 1) {
      throw new InvalidValueException("labels", labels, "a whole number over 0 is right");
    }
    if (time.isZero() || time.isNegative()) {
      throw new InvalidValueException("budget", time, "a time over 0 is right, such as 10s");
    }
  }

  /** The usual labels within that time. */
  public static Budget of(Duration time) {
    return new Budget(USUAL.labels, time);
  }
}
