package org.arcwright.compose.instance;

/** One piece of a solution. Times are minutes from the start. */
public sealed interface Item {
  /** When it starts. */
  int start();

  /** How long it lasts. */
  int length();

  /** When it ends. */
  default int end() {
    return start() + length();
  }

  /**
   * An exercise.
   *
   * @param id the candidate's
   * @param phase the phase's number, from 0
   * @param start minute
   * @param length minutes
   */
  record Activity(String id, int phase, int start, int length) implements Item {}

  /**
   * A break, ordinary or a meal.
   *
   * @param start minute
   * @param length minutes
   */
  record Pause(int start, int length) implements Item {}
}
