package org.arcwright.brief;

import java.time.Duration;
import java.time.LocalTime;
import org.arcwright.catalog.InvalidValueException;

/** A time within the workshop. */
public sealed interface Moment {
  /**
   * So long after the start.
   *
   * @param duration zero or more
   */
  record After(Duration duration) implements Moment {
    /** Refuses a time before the start. */
    public After {
      if (duration.isNegative()) {
        throw new InvalidValueException(
            "at", duration.toMinutes() + " min", "not before the start");
      }
    }
  }

  /**
   * At that time of day, where the workshop starts; the brief must say when it starts.
   *
   * @param time of day
   */
  record Clock(LocalTime time) implements Moment {}
}
