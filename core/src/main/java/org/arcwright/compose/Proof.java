package org.arcwright.compose;

import java.time.Duration;
import java.time.temporal.ChronoUnit;

/**
 * How sure an agenda is.
 *
 * @param best whether no agenda for the brief costs less
 * @param cost the agenda's, in points
 * @param bound no agenda costs less than this
 * @param labels search steps taken
 * @param time spent, reduction included, in whole microseconds
 */
public record Proof(boolean best, long cost, long bound, long labels, Duration time) {
  /** Drops what is shorter than a microsecond. */
  public Proof {
    time = time.truncatedTo(ChronoUnit.MICROS);
  }
}
