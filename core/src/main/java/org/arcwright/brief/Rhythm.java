package org.arcwright.brief;

import java.time.Duration;
import org.arcwright.catalog.InvalidValueException;

/**
 * How long people work in a row, and how long they rest.
 *
 * @param shortest a stretch under this next to a break is wasteful
 * @param longest no stretch goes beyond this; 5 minutes to 5 hours
 * @param pause length of an ordinary break; zero means no ordinary breaks
 */
public record Rhythm(Duration shortest, Duration longest, Duration pause) {
  /** Refuses stretches that are turned round and breaks over two hours. */
  public Rhythm {
    if (shortest.isNegative() || shortest.compareTo(longest) > 0) {
      throw new InvalidValueException(
          "stretch",
          shortest.toMinutes() + " to " + longest.toMinutes() + " min",
          "write it ascending: shortest, longest");
    }
    if (longest.toMinutes() < 5 || longest.toMinutes() > 300) {
      throw new InvalidValueException(
          "stretch", longest.toMinutes() + " min", "the longest lies between 5 and 300 minutes");
    }
    if (pause.isNegative() || pause.toMinutes() > 120) {
      throw new InvalidValueException(
          "break", pause.toMinutes() + " min", "from 0 (none) to 120 minutes is right");
    }
  }
}
