package org.arcwright.compose;

import org.arcwright.agenda.Agenda;

/**
 * Hears how composing goes on, on the composing thread, which waits until it returns. Between two
 * calls agendas only get cheaper and bounds only rise; when both meet, the agenda is proven best.
 * What it throws ends the work and goes on to the caller.
 */
public interface Listener {
  /** Hears nothing. */
  Listener NONE = new Listener() {};

  /**
   * An agenda that is better than any before it and keeps to the brief.
   *
   * @param agenda it
   * @param cost its points
   */
  default void incumbent(Agenda agenda, long cost) {}

  /**
   * A higher bound than any before it.
   *
   * @param cost no agenda has fewer points
   */
  default void bound(long cost) {}
}
