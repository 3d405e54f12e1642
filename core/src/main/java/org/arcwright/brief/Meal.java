package org.arcwright.brief;

import java.time.Duration;
import org.arcwright.catalog.InvalidValueException;

/**
 * A long break for a meal.
 *
 * @param earliest earliest start, from the workshop's start
 * @param latest latest start, from the workshop's start
 * @param length how long, 5 minutes to 4 hours
 */
public record Meal(Duration earliest, Duration latest, Duration length) {
  /** Refuses a window that is turned round or before the start. */
  public Meal {
    if (earliest.isNegative() || earliest.compareTo(latest) > 0) {
      throw new InvalidValueException(
          "at",
          earliest.toMinutes() + " to " + latest.toMinutes() + " min after the start",
          "it starts after the workshop does, and the earliest start comes first");
    }
    if (length.toMinutes() < 5 || length.toMinutes() > 240) {
      throw new InvalidValueException(
          "minutes", length.toMinutes() + " min", "from 5 to 240 minutes is right");
    }
  }
}
