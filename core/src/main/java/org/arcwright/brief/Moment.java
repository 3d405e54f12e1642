package org.arcwright.brief;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import org.arcwright.catalog.InvalidValueException;

/** A time within the workshop. */
public sealed interface Moment {
  /**
   * How long after the workshop's start it is. A time of day before the start's counts for the next
   * day.
   */
  Duration after(ZonedDateTime start);

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

    @Override
    public Duration after(ZonedDateTime start) {
      return duration;
    }
  }

  /**
   * At that time of day, where the workshop starts; the brief must say when it starts.
   *
   * @param time of day
   */
  record Clock(LocalTime time) implements Moment {
    @Override
    public Duration after(ZonedDateTime start) {
      ZonedDateTime then = start.with(time);
      return Duration.between(start, then.isBefore(start) ? then.plusDays(1) : then);
    }
  }
}
