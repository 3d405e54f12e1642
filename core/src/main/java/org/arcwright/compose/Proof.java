package org.arcwright.compose;

import java.time.Duration;

/**
 * How sure an agenda is.
 *
 * @param best whether no agenda for the brief costs less
 * @param cost the agenda's, in points
 * @param bound no agenda costs less than this
 * @param labels search steps taken
 * @param time spent, reduction included
 */
public record Proof(boolean best, long cost, long bound, long labels, Duration time) {}
