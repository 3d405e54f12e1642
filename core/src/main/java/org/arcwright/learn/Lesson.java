package org.arcwright.learn;

import java.time.Duration;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * What logs teach about one exercise. Factors are kept to four decimals, times to a quarter of a
 * minute.
 *
 * @param exercise its id
 * @param logs how many logs have it
 * @param people the usual number of people in them
 * @param factor how many times as long it takes as the catalog says; 1 if there are too few logs
 * @param low with four chances in five it takes at least so many times as long
 * @param high and at most so many
 * @param before its usual time for so many people, or the nearest number it serves, by the catalog
 * @param now the same with what was learnt
 */
public record Lesson(
    String exercise,
    int logs,
    int people,
    double factor,
    double low,
    double high,
    Duration before,
    Duration now) {
  private static final double DECIMALS = 10_000;
  private static final long QUARTER_MINUTE = 15;

  /** Refuses factors that do not ascend from over 0. */
  public Lesson {
    Checks.id("exercise", exercise);
    factor = rounded(factor);
    low = rounded(low);
    high = rounded(high);
    before = rounded(before);
    now = rounded(now);
    if (!(0 < low && low <= factor && factor <= high && high < Double.POSITIVE_INFINITY)) {
      throw new InvalidValueException("factor", factor, "low, factor and high ascend, from over 0");
    }
  }

  private static double rounded(double factor) {
    return Math.round(DECIMALS * factor) / DECIMALS;
  }

  private static Duration rounded(Duration time) {
    return Duration.ofSeconds(
        QUARTER_MINUTE * Math.round((double) time.toSeconds() / QUARTER_MINUTE));
  }

  /** Whether there are enough logs to learn from. */
  public boolean learnt() {
    return logs >= Learner.FEWEST;
  }
}
