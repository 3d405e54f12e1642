package org.arcwright.compose.search;

/** Counts the search's steps and asks now and then whether to stop. */
final class Work {
  private static final long INTERVAL = 2048;

  private final Limit limit;
  private long done;
  private long nextAsk;

  Work(Limit limit) {
    this.limit = limit;
  }

  /**
   * Adds steps.
   *
   * @throws Stopped if the limit is reached
   */
  void add(long steps) {
    done += steps;
    if (done >= nextAsk) {
      ask();
    }
  }

  /**
   * Asks at once.
   *
   * @throws Stopped if the limit is reached
   */
  void ask() {
    nextAsk = done + INTERVAL;
    if (limit.reached(done)) {
      throw new Stopped();
    }
  }

  /** Steps so far. */
  long done() {
    return done;
  }

  /** The limit is reached; caught within this package. */
  static final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Stopped() {
      super("limit reached", null, false, false);
    }
  }
}
