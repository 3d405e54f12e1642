package org.arcwright.live;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Nearest;

/**
 * Where a day stands: what is over, what runs, and what time it is. All times are counted from the
 * agenda's planned start.
 *
 * @param now the time
 * @param end when everybody has to be free
 * @param past what has run, in order; only the last may still run
 */
public record Stand(Duration now, Duration end, List<Past> past) {
  /**
   * An exercise or a break that has run or runs.
   *
   * @param item the exercise's id, or {@link LogEntry#BREAK}
   * @param planned how long it was to take, if it was planned
   * @param start when it began
   * @param end when it was over; nothing while it runs
   */
  public record Past(
      String item, Optional<Duration> planned, Duration start, Optional<Duration> end) {
    /** Refuses an end before the start. */
    public Past {
      Checks.id("item", item);
      if (end.isPresent() && end.get().compareTo(start) < 0) {
        throw new InvalidValueException(
            "end of " + item, end.get().toMinutes(), "no earlier than its start");
      }
    }

    /** Whether it is a break or a meal. */
    public boolean isBreak() {
      return item.equals(LogEntry.BREAK);
    }
  }

  /** Refuses an end that is over, and a past that is out of order or lies ahead. */
  public Stand {
    past = List.copyOf(past);
    if (now.isNegative()) {
      throw new InvalidValueException(
          "now", now.toMinutes() + " min", "a time after the start; before it, compose anew");
    }
    if (end.compareTo(now) <= 0) {
      throw new InvalidValueException(
          "now", now.toMinutes() + " min", "before the end at " + end.toMinutes() + " min");
    }
    Duration before = Duration.ofDays(-1);
    for (int i = 0; i < past.size(); i++) {
      Past each = past.get(i);
      Duration last = each.end().orElse(each.start());
      if (each.start().compareTo(before) < 0 || last.compareTo(now) > 0) {
        throw new InvalidValueException(
            "past[" + i + "]", each.item(), "in the order of time, and none later than now");
      }
      if (each.end().isEmpty() && i < past.size() - 1) {
        throw new InvalidValueException("past[" + i + "]", each.item(), "only the last still runs");
      }
      before = last;
    }
  }

  /** What runs now. */
  public Optional<Past> running() {
    return past.isEmpty()
        ? Optional.empty()
        : Optional.of(past.get(past.size() - 1)).filter(last -> last.end().isEmpty());
  }

  /** How many of an agenda's items, from its first, have begun or were passed over. */
  static int begun(Agenda agenda, List<Past> past) {
    int begun = 0;
    List<AgendaItem> items = agenda.items();
    for (Past each : past) {
      if (each.isBreak()) {
        boolean due = begun < items.size() && items.get(begun) instanceof Pause;
        begun += due ? 1 : 0;
        continue;
      }
      for (int i = begun; i < items.size(); i++) {
        if (name(items.get(i)).equals(each.item())) {
          begun = i + 1;
          break;
        }
      }
    }
    return begun;
  }

  /**
   * As a log tells it. Where the agenda does not say when it starts, times count from the first
   * entry that starts something.
   */
  public static Stand of(Agenda agenda, Progress progress, OffsetDateTime now, Duration end) {
    OffsetDateTime zero = zero(agenda, progress).orElse(now);
    return new Stand(Duration.between(zero, now), end, past(progress, zero));
  }

  /** What has run, its times counted from a moment. */
  static List<Past> past(Progress progress, OffsetDateTime zero) {
    List<Past> past = new ArrayList<>();
    for (Progress.Run run : progress.runs()) {
      past.add(
          new Past(
              run.item(),
              run.planned(),
              Duration.between(zero, run.start()),
              run.end().map(time -> Duration.between(zero, time))));
    }
    return past;
  }

  /** From when an agenda's times count on a day of that progress, if that is known. */
  public static Optional<OffsetDateTime> zero(Agenda agenda, Progress progress) {
    return agenda
        .start()
        .map(start -> start.toOffsetDateTime())
        .or(() -> progress.runs().stream().findFirst().map(Progress.Run::start));
  }

  /** As if everything had kept to its plan until now. */
  public static Stand asPlanned(Agenda agenda, Duration now, Duration end) {
    List<Past> past = new ArrayList<>();
    for (AgendaItem item : agenda.items()) {
      if (item.start().compareTo(now) <= 0) {
        Optional<Duration> over = Optional.of(item.end()).filter(time -> time.compareTo(now) <= 0);
        past.add(new Past(name(item), Optional.of(item.length()), item.start(), over));
      }
    }
    return new Stand(now, end, past);
  }

  /**
   * As told in a word: everything before an item is over, and that item runs. What came just before
   * it is taken to have run until it began.
   *
   * @param item id of an exercise of the agenda, or its number among the exercises, or {@link
   *     LogEntry#BREAK} for the last break that was to begin by now
   * @param since when it began; without it, when it was planned to, or now if that is still to come
   * @throws InvalidValueException if the agenda has no such item
   */
  public static Stand at(
      Agenda agenda, String item, Optional<Duration> since, Duration now, Duration end) {
    int place = place(agenda, item, now);
    AgendaItem current = agenda.items().get(place);
    Duration began = since.orElse(earlier(current.start(), now));
    List<Past> past = new ArrayList<>();
    for (AgendaItem each : agenda.items().subList(0, place)) {
      boolean last = each == agenda.items().get(place - 1);
      Duration from = earlier(each.start(), began);
      Duration to = last ? began : earlier(each.end(), began);
      past.add(new Past(name(each), Optional.of(each.length()), from, Optional.of(to)));
    }
    past.add(new Past(name(current), Optional.of(current.length()), began, Optional.empty()));
    return new Stand(now, end, past);
  }

  private static int place(Agenda agenda, String item, Duration now) {
    List<String> known = new ArrayList<>();
    int found = -1;
    for (int i = 0; i < agenda.items().size(); i++) {
      AgendaItem each = agenda.items().get(i);
      if (each instanceof Activity activity) {
        known.add(activity.exercise());
        if (activity.exercise().equals(item) || item.equals(String.valueOf(known.size()))) {
          return i;
        }
      } else if (item.equals(LogEntry.BREAK) && (found < 0 || each.start().compareTo(now) <= 0)) {
        found = i;
      }
    }
    if (found < 0) {
      String remedy =
          Nearest.to(item, known)
              .map(near -> "perhaps " + near)
              .orElse(
                  "give a number from 1 to "
                      + known.size()
                      + ", break, or one of "
                      + String.join(", ", known));
      throw new InvalidValueException("item", item, "the agenda has no such item; " + remedy);
    }
    return found;
  }

  /** What an item is called here. */
  static String name(AgendaItem item) {
    return item instanceof Activity activity ? activity.exercise() : LogEntry.BREAK;
  }

  private static Duration earlier(Duration one, Duration other) {
    return one.compareTo(other) <= 0 ? one : other;
  }
}
