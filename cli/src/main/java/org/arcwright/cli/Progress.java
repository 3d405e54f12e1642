package org.arcwright.cli;

import java.io.PrintStream;
import java.time.Duration;

/** Tells somebody who watches that work goes on, once it lasts over a second. */
final class Progress implements AutoCloseable {
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

  /** Starts telling, if somebody watches. */
  static Progress of(Terminal terminal, Duration budget) {
    Progress progress = new Progress(terminal.err(), budget);
    if (terminal.progress()) {
      progress.teller.start();
    }
    return progress;
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

  /** Stops telling and wipes what was told. */
  @Override
  public void close() {
    teller.interrupt();
    try {
      teller.join(SECOND);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
