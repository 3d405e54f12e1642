package org.arcwright.brief;

import java.time.Duration;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;

/**
 * Something of the sponsor's own that must stand in the agenda: a guest's talk, a demo.
 *
 * @param id unique among the brief's own items and the catalog's exercises
 * @param title in words
 * @param length exactly how long, 1 to 300 minutes
 * @param phase name of the phase it belongs to, if that matters
 * @param at when it starts, if that matters
 * @param energy how lively people are in it: 1 calm to 5 lively
 * @param format how people sit together
 */
public record OwnItem(
    String id,
    String title,
    Duration length,
    Optional<String> phase,
    Optional<Moment> at,
    int energy,
    Format format) {
  /** Refuses an item without a place in the day, and one of no length. */
  public OwnItem {
    Checks.id("id", id);
    title = Checks.text("title", title, 120);
    if (length.toMinutes() < 1 || length.toMinutes() > 300) {
      throw new InvalidValueException(
          "minutes", length.toMinutes(), "from 1 to 300 minutes is right");
    }
    Checks.range("energy", energy, 1, 5);
  }
}
