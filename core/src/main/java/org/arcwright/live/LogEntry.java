package org.arcwright.live;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/** Something that happened on the day. What was entered by mistake is undone, never erased. */
public sealed interface LogEntry {
  /** What a break is called where an exercise has its id; meals are breaks, too. */
  String BREAK = "break";

  /** When it happened. */
  OffsetDateTime at();

  /**
   * An exercise or a break begins.
   *
   * @param at when
   * @param item the exercise's id, or {@link #BREAK}
   * @param planned how long the agenda gives it; nothing if it was not planned
   */
  record Started(OffsetDateTime at, String item, Optional<Duration> planned) implements LogEntry {
    /** Refuses a plan of no time. */
    public Started {
      Checks.id("started", item);
      if (planned.isPresent() && (planned.get().isNegative() || planned.get().isZero())) {
        throw new InvalidValueException(
            "planned", planned.get().toMinutes(), "over 0 minutes are right");
      }
    }
  }

  /**
   * What runs is over.
   *
   * @param at when
   * @param item the exercise's id, or {@link #BREAK}
   */
  record Ended(OffsetDateTime at, String item) implements LogEntry {
    /** Refuses what is no id. */
    public Ended {
      Checks.id("ended", item);
    }
  }

  /**
   * Something worth remembering.
   *
   * @param at when
   * @param text at most 2000 characters
   */
  record Note(OffsetDateTime at, String text) implements LogEntry {
    /** Refuses a blank text. */
    public Note {
      text = Checks.text("note", text, 2000);
    }
  }

  /**
   * What the group decided.
   *
   * @param at when
   * @param text at most 2000 characters
   */
  record Decision(OffsetDateTime at, String text) implements LogEntry {
    /** Refuses a blank text. */
    public Decision {
      text = Checks.text("decision", text, 2000);
    }
  }

  /**
   * How lively people are.
   *
   * @param at when
   * @param level 1 calm to 5 lively
   */
  record EnergyCheck(OffsetDateTime at, int level) implements LogEntry {
    /** Refuses a level off the scale. */
    public EnergyCheck {
      Checks.range("energy", level, 1, 5);
    }
  }

  /**
   * From here on the day follows another plan.
   *
   * @param at when
   * @param plan the whole day, with what was over by then
   */
  record Agreed(OffsetDateTime at, Agenda plan) implements LogEntry {}

  /**
   * Takes back the last entry that still stands.
   *
   * @param at when
   */
  record Undo(OffsetDateTime at) implements LogEntry {}
}
