package org.arcwright.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Tells somebody who watches that work goes on, once it lasts over a second. */
final class Progress {
  private static final long SECOND = 1000;

  private final PrintStream err;
  private final Supplier<String> stand;
  private final Thread teller;
  private int shown;

  private Progress(PrintStream err, Supplier<String> stand) {
    this.err = err;
    this.stand = stand;
    this.teller = new Thread(this::tell, "progress");
    teller.setDaemon(true);
  }

  /** Does the work, and tells of it if somebody watches. */
  static <T> T during(Terminal terminal, Duration budget, Supplier<T> work) {
    AtomicInteger seconds = new AtomicInteger();
    return during(
        terminal.err(),
        terminal.progress(),
        () ->
            "Searching: "
                + seconds.incrementAndGet()
                + " s of "
                + budget.toSeconds()
                + " s at most",
        work);
  }

  /**
   * Does the work, and says every second how it stands.
   *
   * @param watched whether to say it at all
   * @param stand asked once a second, from another thread
   */
  static <T> T during(PrintStream err, boolean watched, Supplier<String> stand, Supplier<T> work) {
    if (!watched) {
      return work.get();
    }
    Progress progress = new Progress(err, stand);
    progress.teller.start();
    try {
      return work.get();
    } finally {
      progress.stop();
    }
  }

  private void tell() {
    try {
      while (true) {
        Thread.sleep(SECOND);
        String text = stand.get();
        err.print("\r" + text + " ".repeat(Math.max(0, shown - text.length())));
        err.flush();
        shown = text.length();
      }
    } catch (InterruptedException e) {
      if (shown > 0) {
        err.print("\r" + " ".repeat(shown) + "\r");
        err.flush();
      }
    }
  }

  /** Wipes what was told. */
  private void stop() {
    teller.interrupt();
    try {
      teller.join(SECOND);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
