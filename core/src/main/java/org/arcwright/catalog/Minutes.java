package org.arcwright.catalog;

import java.time.Duration;

/**
 * A three-point estimate of how long something takes.
 *
 * @param min shortest that still works, zero or more
 * @param typical usual
 * @param max longest that still helps, at most a day
 */
public record Minutes(Duration min, Duration typical, Duration max) {
  static final Duration DAY = Duration.ofDays(1);

  /** Refuses negative times and a range that is turned round. */
  public Minutes {
    if (min.isNegative() || max.compareTo(DAY) > 0) {
      throw new InvalidValueException(
          "minutes", text(min) + " to " + text(max), "from 0 minutes to a day is right");
    }
    if (min.compareTo(typical) > 0 || typical.compareTo(max) > 0) {
      throw new InvalidValueException(
          "minutes",
          "[" + text(min) + ", " + text(typical) + ", " + text(max) + "]",
          "write them ascending: min, typical, max");
    }
  }

  /** The sum, end by end. */
  public Minutes plus(Minutes other) {
    return new Minutes(min.plus(other.min), typical.plus(other.typical), max.plus(other.max));
  }

  /** The same {@code times} times, end by end. */
  public Minutes times(int times) {
    return times == 1
        ? this
        : new Minutes(times(min, times), times(typical, times), times(max, times));
  }

  /** Exact; {@link Duration#multipliedBy} goes through big numbers, which large catalogs feel. */
  private static Duration times(Duration duration, int times) {
    return Duration.ofSeconds(duration.getSeconds() * times, (long) duration.getNano() * times);
  }

  @Override
  public String toString() {
    return text(min) + "-" + text(typical) + "-" + text(max) + " min";
  }

  private static String text(Duration duration) {
    return duration.toSecondsPart() == 0
        ? String.valueOf(duration.toMinutes())
        : String.valueOf(duration.toSeconds() / 60.0);
  }
}
