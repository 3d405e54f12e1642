package org.arcwright.record;

import java.time.Duration;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.live.LogEntry;

/**
 * An exercise or a break as it took place.
 *
 * @param item the exercise's id, or {@link LogEntry#BREAK}
 * @param title in words, where the catalog does not have the item
 * @param from from the workshop's planned start, at least {@link #EARLIEST}
 * @param to after {@code from}, within two days
 * @param note what was special about it
 */
public record Happening(
    String item, Optional<String> title, Duration from, Duration to, Optional<String> note) {
  /** Nothing begins over an hour before the workshop was to. */
  public static final Duration EARLIEST = Duration.ofHours(-1);

  private static final Duration LONGEST = Duration.ofDays(2);

  /** Refuses what begins too early, or ends before it begins. */
  public Happening {
    Checks.id("item", item);
    title = title.map(text -> Checks.text("title", text, 120));
    note = note.map(text -> Checks.text("note", text, 400));
    if (from.compareTo(EARLIEST) < 0) {
      throw new InvalidValueException(
          "from", -from.toMinutes() + " min before the start", "at most an hour is right");
    }
    if (to.compareTo(from) <= 0) {
      throw new InvalidValueException(
          "to", to.toMinutes() + " min after the start", "it ends after it begins");
    }
    if (to.minus(from).compareTo(LONGEST) > 0) {
      throw new InvalidValueException(
          "to", to.minus(from).toMinutes() + " min long", "nothing takes more than two days");
    }
  }

  /** Whether it is a break or a meal. */
  public boolean isBreak() {
    return item.equals(LogEntry.BREAK);
  }

  /** How long it took. */
  public Duration length() {
    return to.minus(from);
  }
}
