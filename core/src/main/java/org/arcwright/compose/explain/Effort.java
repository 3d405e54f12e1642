package org.arcwright.compose.explain;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.search.Limit;

/** What is left of a budget that many searches share. */
final class Effort {
  private final Optional<Effort> whole;
  private final Budget budget;
  private final Cancel cancel;
  private final InstantSource clock;
  private final Instant begin;
  private long labels;

  private Effort(Optional<Effort> whole, Budget budget, Cancel cancel, InstantSource clock) {
    this.whole = whole;
    this.budget = budget;
    this.cancel = cancel;
    this.clock = clock;
    this.begin = clock.instant();
  }

  static Effort of(Budget budget, Cancel cancel, InstantSource clock) {
    return new Effort(Optional.empty(), budget, cancel, clock);
  }

  /** So many per cent of what is left, to be spent from now on. */
  Effort percent(int percent) {
    Budget part =
        budget(
            Math.max(1, left() / 100 * percent), timeLeft().multipliedBy(percent).dividedBy(100));
    return new Effort(Optional.of(this), part, cancel, clock);
  }

  /** One of so many equal parts of what is left. */
  Budget part(int parts) {
    return budget(left() / parts, timeLeft().dividedBy(parts));
  }

  /** Whether to stop now: nothing is left, or somebody cancels, or the thread is interrupted. */
  boolean spent() {
    return left() <= 0 || cancelled() || timeLeft().isZero();
  }

  private boolean cancelled() {
    return cancel.requested() || Thread.currentThread().isInterrupted();
  }

  /** Counts the work of a search. */
  void add(long done) {
    labels += done;
    whole.ifPresent(effort -> effort.add(done));
  }

  /** Ends a search that takes more than one of so many equal parts of what is left. */
  Limit limit(int parts) {
    Budget part = part(parts);
    Instant end = clock.instant().plus(part.time());
    return done -> done >= part.labels() || cancelled() || clock.instant().isAfter(end);
  }

  Cancel cancel() {
    return cancel;
  }

  private long left() {
    return budget.labels() - labels;
  }

  private Duration timeLeft() {
    Duration left = budget.time().minus(Duration.between(begin, clock.instant()));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** A budget is never empty. */
  private static Budget budget(long labels, Duration time) {
    return new Budget(Math.max(1, labels), time.isZero() ? Duration.ofNanos(1) : time);
  }
}
