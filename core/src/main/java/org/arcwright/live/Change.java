package org.arcwright.live;

import java.time.Duration;

/** One thing that becomes different from the plan. Times are counted from the planned start. */
public sealed interface Change {
  /** The exercise's id. */
  String exercise();

  /** The exercise's title. */
  String title();

  /**
   * What runs now ends at another time than it would if nothing changed.
   *
   * @param exercise id
   * @param title in words
   * @param by when it ends
   */
  record Closed(String exercise, String title, Duration by) implements Change {}

  /**
   * An exercise takes another time than planned.
   *
   * @param exercise id
   * @param title in words
   * @param from planned length
   * @param to new length
   */
  record Resized(String exercise, String title, Duration from, Duration to) implements Change {}

  /**
   * A planned exercise does not take place.
   *
   * @param exercise id
   * @param title in words
   * @param length that it was to take
   */
  record LeftOut(String exercise, String title, Duration length) implements Change {}

  /**
   * An exercise that was not planned takes place.
   *
   * @param exercise id
   * @param title in words
   * @param start when
   * @param length how long
   */
  record Added(String exercise, String title, Duration start, Duration length) implements Change {}

  /**
   * What was tied to a time starts at another.
   *
   * @param exercise id
   * @param title in words
   * @param from the time it was tied to
   * @param to when it starts
   */
  record Moved(String exercise, String title, Duration from, Duration to) implements Change {}
}
