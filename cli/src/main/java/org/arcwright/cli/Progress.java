package org.arcwright.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.function.Supplier;

/** Tells somebody who watches that work goes on, once it lasts over a second. */
final class Progress {
  private static final long SECOND = 1000;

  private final PrintStream err;
  private final Duration budget;
  private final Thread teller;
  private int shown;

  private Progress(PrintStream err, Duration budget) {
    this.err = err;
    this.budget = budget;
    this.teller = new Thread(this::tell, "progress");
    teller.setDaemon(true);
  }

  /** Does the work, and tells of it if somebody watches. */
  static <T> T during(Terminal terminal, Duration budget, Supplier<T> work) {
    if (!terminal.progress()) {
      return work.get();
    }
    Progress progress = new Progress(terminal.err(), budget);
    progress.teller.start();
    try {
      return work.get();
    } finally {
      progress.stop();
    }
  }

  private void tell() {
    try {
      for (int seconds = 1; ; seconds++) {
        Thread.sleep(SECOND);
        String text = "Searching: " + seconds + " s of " + budget.toSeconds() + " s at most";
        err.print("\r" + text);
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
