package org.arcwright.cli;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.cli.document.LiveScreen;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.ReplanDocument;
import org.arcwright.cli.document.Style;
import org.arcwright.live.Day;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.Decision;
import org.arcwright.live.LogEntry.EnergyCheck;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.Progress;
import org.arcwright.live.Replan;
import org.arcwright.live.Stand;

/**
 * What happens at each key while a day is run, and what stands on the screen. It knows no terminal,
 * clock or file: whoever holds it passes keys and times, writes down the entries that a key comes
 * to, and tells it the progress that has them.
 */
final class LiveDesk {
  static final int ENTER = '\r';
  static final int ESCAPE = 27;
  static final int BACKSPACE = 127;
  private static final int LONGEST = 2000;
  private static final String KEYS =
      "Enter done, on to the next   e end only   n note   d decision   1-5 energy\n"
          + "r replan   u undo   q leave; the log is kept";

  /** Finds ways to go on. */
  interface Advice {
    Replan of(Agenda plan, Stand stand);
  }

  /** What the keys do at the moment. */
  private sealed interface Mode {
    record Watching(String message) implements Mode {}

    record Writing(boolean decision, String text) implements Mode {}

    record Choosing(Replan replan) implements Mode {}
  }

  private static final Mode WATCHING = new Mode.Watching("");

  private final Brief brief;
  private final Catalog catalog;
  private final Advice advice;
  private Day day;
  private Mode mode = WATCHING;
  private boolean left;

  /**
   * @param brief what ties something to a time
   * @param catalog where work products have their names from
   */
  LiveDesk(Day day, Brief brief, Catalog catalog, Advice advice) {
    this.day = day;
    this.brief = brief;
    this.catalog = catalog;
    this.advice = advice;
  }

  /** Whether the day is to be left. */
  boolean isLeft() {
    return left;
  }

  /** Goes on from what is written down now. */
  void goOn(Progress progress) {
    day = day.with(progress);
  }

  /** Says something on the next screen, such as that a log line was not finished. */
  void say(String message) {
    mode = new Mode.Watching(message);
  }

  /** What a key comes to: entries to be written down, in their order; often none. */
  List<LogEntry> press(int key, OffsetDateTime now) {
    OffsetDateTime at = day.progress().notBefore(now);
    if (mode instanceof Mode.Writing writing) {
      return write(writing, key, at);
    }
    if (mode instanceof Mode.Choosing choosing) {
      return choose(choosing.replan(), key, at);
    }
    mode = WATCHING;
    return watch(key, now, at);
  }

  private List<LogEntry> watch(int key, OffsetDateTime now, OffsetDateTime at) {
    switch (key) {
      case ENTER, '\n', ' ' -> {
        return day.onward(now);
      }
      case 'e' -> {
        return day.stop(now);
      }
      case 'u' -> {
        say(
            LiveScreen.entered(day)
                .map(entered -> "Undone: " + entered)
                .orElse("There is nothing to undo."));
        return day.undo(now);
      }
      case 'n', 'd' -> mode = new Mode.Writing(key == 'd', "");
      case 'r' -> replan(now);
      case 'q' -> left = true;
      case '1', '2', '3', '4', '5' -> {
        return List.of(new EnergyCheck(at, key - '0'));
      }
      default -> {}
    }
    return List.of();
  }

  private void replan(OffsetDateTime now) {
    Duration since = day.since(now);
    Duration cap = day.plan().cap();
    if (since.isNegative()) {
      say(
          "Nothing has slipped yet: the day begins at "
              + DayTime.shown(day.plan(), Duration.ZERO)
              + ".");
      return;
    }
    if (since.compareTo(cap) >= 0) {
      say(
          "The end at "
              + DayTime.shown(day.plan(), cap)
              + " is past. If people stay: q, then replan --done LOG --end TIME");
      return;
    }
    try {
      mode = new Mode.Choosing(advice.of(day.plan(), day.stand(now, day.plan().cap())));
    } catch (InvalidValueException e) {
      say("There is nothing to replan: " + e.getMessage());
    }
  }

  private List<LogEntry> write(Mode.Writing writing, int key, OffsetDateTime at) {
    String text = writing.text();
    switch (key) {
      case ESCAPE -> mode = WATCHING;
      case ENTER, '\n' -> {
        mode = WATCHING;
        if (!text.isBlank()) {
          return List.of(
              writing.decision() ? new Decision(at, text.strip()) : new Note(at, text.strip()));
        }
      }
      case BACKSPACE, '\b' ->
          mode =
              new Mode.Writing(
                  writing.decision(),
                  text.isEmpty()
                      ? text
                      : text.substring(0, text.offsetByCodePoints(text.length(), -1)));
      default -> {
        if (key >= ' ' && text.length() < LONGEST) {
          mode = new Mode.Writing(writing.decision(), text + (char) key);
        }
      }
    }
    return List.of();
  }

  private List<LogEntry> choose(Replan replan, int key, OffsetDateTime at) {
    int number = key - '0';
    if (number >= 1 && number <= replan.ways().size()) {
      say("Agreed.");
      return List.of(new Agreed(at, replan.ways().get(number - 1).agenda()));
    }
    if (key == ESCAPE || key == 'q' || key == 'r') {
      mode = WATCHING;
    }
    return List.of();
  }

  /**
   * What stands on the screen.
   *
   * @param width of a line in characters, 40 or more
   * @param rows that can be seen at once
   */
  List<String> screen(OffsetDateTime now, Marks marks, Style style, int width, int rows) {
    List<String> lines = new ArrayList<>();
    if (mode instanceof Mode.Choosing choosing) {
      Replan replan = choosing.replan();
      lines.addAll(
          new ReplanDocument(replan, day.plan(), brief, catalog)
              .advice(marks, style, width, rows - 2));
      lines.add("");
      int ways = replan.ways().size();
      lines.add(
          (ways == 0 ? "" : (ways == 1 ? "1" : "1-" + ways) + " agree on that way   ")
              + "Esc back");
      return lines;
    }
    lines.addAll(LiveScreen.draw(day, now, marks, style, width));
    lines.add("");
    if (mode instanceof Mode.Watching watching) {
      if (!watching.message().isEmpty()) {
        lines.add(watching.message());
        lines.add("");
      }
      KEYS.lines().forEach(lines::add);
    }
    prompt(width).ifPresent(lines::add);
    return lines;
  }

  /** Whether a line is being written, the last on the screen. */
  boolean isWriting() {
    return mode instanceof Mode.Writing;
  }

  /** What is being written; of a long line its end, where the next letter goes. */
  private Optional<String> prompt(int width) {
    if (!(mode instanceof Mode.Writing writing)) {
      return Optional.empty();
    }
    String label = writing.decision() ? "decided: " : "note: ";
    String text = writing.text();
    if (!text.isEmpty() && Character.isHighSurrogate(text.charAt(text.length() - 1))) {
      text = text.substring(0, text.length() - 1); // the other half has not come yet
    }
    int room = width - label.length() - 1;
    return Optional.of(label + text.substring(Math.max(0, text.length() - room)));
  }
}
