package org.arcwright.compose;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import org.arcwright.compose.search.Limit;

/**
 * What is left of a budget, for all parts of one answer together: the reduction, each search, the
 * explanation. Nothing is left once the time is over, or somebody cancels, or the thread is
 * interrupted, whose flag stays up. Belongs to one thread.
 */
final class Allowance {
  private final Budget budget;
  private final Cancel cancel;
  private final InstantSource clock;
  private final Instant begin;
  private long charged;

  Allowance(Budget budget, Cancel cancel, InstantSource clock) {
    this.budget = budget;
    this.cancel = cancel;
    this.clock = clock;
    this.begin = clock.instant();
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
  }

  /** Time since the beginning. */
  Duration elapsed() {
    return Duration.between(begin, clock.instant());
  }
}
