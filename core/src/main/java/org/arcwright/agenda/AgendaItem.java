package org.arcwright.agenda;

import java.time.Duration;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Kind;

/** One piece of an agenda, from {@link #start} until just before {@link #end}. */
public sealed interface AgendaItem {
  /** When it starts, from the workshop's start. */
  Duration start();

  /** How long it lasts, over zero. */
  Duration length();

  /** When it ends. */
  default Duration end() {
    return start().plus(length());
  }

  /**
   * An exercise or one of the sponsor's own items.
   *
   * @param exercise its id in the catalog or in the brief
   * @param title in words
   * @param kind the exercise's kind; none for an own item
   * @param phase name of its phase
   * @param start from the workshop's start
   * @param length how long
   * @param format in which most of its time is spent
   * @param energy in tenths: 10 calm to 50 lively
   */
  record Activity(
      String exercise,
      String title,
      Optional<Kind> kind,
      String phase,
      Duration start,
      Duration length,
      Format format,
      int energy)
      implements AgendaItem {
    /** Refuses an activity before the start or of no length. */
    public Activity {
      Checks.id("exercise", exercise);
      title = Checks.text("title", title, 120);
      Checks.id("phase", phase);
      Checks.range("energy", energy, 10, 50);
      positive(start, length);
    }
  }

  /**
   * A break.
   *
   * @param start from the workshop's start
   * @param length how long
   * @param meal whether it is a meal
   */
  record Pause(Duration start, Duration length, boolean meal) implements AgendaItem {
    /** Refuses a break before the start or of no length. */
    public Pause {
      positive(start, length);
    }
  }

  private static void positive(Duration start, Duration length) {
    if (start.isNegative()) {
      throw new InvalidValueException(
          "start", start.toMinutes(), "not before the workshop's start");
    }
    if (length.isZero() || length.isNegative()) {
      throw new InvalidValueException("minutes", length.toMinutes(), "over 0 is right");
    }
  }
}
