package org.arcwright.compose;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.arcwright.compose.search.Limit;

/**
 * What is left of a budget, for all parts of one answer together: the reduction, each search, the
 * explanation. Nothing is left once the time is over, or somebody cancels, or the thread is
 * interrupted, whose flag stays up. Belongs to one thread.
 */
final class Allowance {
  private final Optional<Allowance> whole;
  private final Budget budget;
  private final Cancel cancel;
  private final InstantSource clock;
  private final Instant begin;
  private long charged;

  Allowance(Budget budget, Cancel cancel, InstantSource clock) {
    this(Optional.empty(), budget, cancel, clock);
  }

  private Allowance(Optional<Allowance> whole, Budget budget, Cancel cancel, InstantSource clock) {
    this.whole = whole;
    this.budget = budget;
    this.cancel = cancel;
    this.clock = clock;
    this.begin = clock.instant();
  }

  /** One of so many equal parts of what is left, to be spent from now on; never quite nothing. */
  Allowance part(int parts) {
    Duration time = budget.time().minus(elapsed()).dividedBy(parts);
    Budget part =
        new Budget(
            Math.max(1, (budget.labels() - charged) / parts),
            time.compareTo(Duration.ZERO) > 0 ? time : Duration.ofNanos(1));
    return new Allowance(Optional.of(this), part, cancel, clock);
  }

  /** Whether to stop now, whatever is being done. */
  boolean spent() {
    return elapsed().compareTo(budget.time()) >= 0 || cancelled();
  }

  /** Whether to wait for others no longer: half of the time is over, or nothing is left. */
  boolean halfSpent() {
    return elapsed().multipliedBy(2).compareTo(budget.time()) >= 0 || cancelled();
  }

  private boolean cancelled() {
    return cancel.requested() || Thread.currentThread().isInterrupted();
  }

  /** The limit of the next search; charge its labels when it is over. */
  Limit limit() {
    return labels -> charged + labels >= budget.labels() || spent();
  }

  /** Takes the labels of a search that is over off the budget. */
  void charge(long labels) {
    charged += labels;
    whole.ifPresent(all -> all.charge(labels));
  }

  /** Time since the beginning. */
  Duration elapsed() {
    return Duration.between(begin, clock.instant());
  }
}
