package org.arcwright.compose.search;

/** Counts the search's steps and asks now and then whether to stop. */
final class Work {
  /** Most steps between two questions; the first ones come sooner. */
  private static final long INTERVAL = 2048;

  private final Limit limit;
  private long done;
  private long nextAsk;
  private long pause = Long.MAX_VALUE;

  Work(Limit limit) {
    this.limit = limit;
  }

  /**
   * Adds steps.
   *
   * @throws Stopped if the limit is reached
   * @throws Paused if the steps of {@link #allow} are taken
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
   * @throws Paused if the steps of {@link #allow} are taken
   */
  void ask() {
    nextAsk = Math.min(done + Math.min(INTERVAL, done + 1), pause);
    if (limit.reached(done)) {
      throw new Stopped();
    }
    if (done >= pause) {
      pause = Long.MAX_VALUE;
      throw new Paused();
    }
  }

  /** Lets so many more steps be taken before a pause. */
  void allow(long steps) {
    pause = steps >= Long.MAX_VALUE - done ? Long.MAX_VALUE : done + steps;
    nextAsk = Math.min(nextAsk, pause);
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

  /** The allowance is used up; caught within this package. */
  static final class Paused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Paused() {
      super("allowance used up", null, false, false);
    }
  }
}
