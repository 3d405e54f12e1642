package org.arcwright.live;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;

/**
 * What has happened on one day, entry by entry. It only ever grows: what it says now follows from
 * all its entries in order, so that the same log always leads to the same state.
 *
 * @param workshop which day it is of
 * @param entries in the order of entering, none earlier than the one before
 */
public record Progress(Workshop workshop, List<LogEntry> entries) {
  /**
   * The day that a log is of.
   *
   * @param title as in the agenda
   * @param mode where people are
   * @param people how many came
   * @param start when it was to start, if that was planned
   * @param simulated whether it never took place, and its times were drawn by a program
   * @param rehearsal whether it was only tried out, without the group
   */
  public record Workshop(
      String title,
      Mode mode,
      int people,
      Optional<ZonedDateTime> start,
      boolean simulated,
      boolean rehearsal) {
    /** Refuses a blank title, and nobody. */
    public Workshop {
      title = Checks.text("title", title, 120);
      Checks.range("people", people, 1, 1000);
    }

    /** One that takes place. */
    public Workshop(String title, Mode mode, int people, Optional<ZonedDateTime> start) {
      this(title, mode, people, start, false, false);
    }

    /** One that takes place, or whose times were drawn by a program. */
    public Workshop(
        String title, Mode mode, int people, Optional<ZonedDateTime> start, boolean simulated) {
      this(title, mode, people, start, simulated, false);
    }

    /** The same, tried out without the group. */
    public Workshop rehearsed() {
      return new Workshop(title, mode, people, start, simulated, true);
    }
  }

  /**
   * An exercise or a break, once through.
   *
   * @param item the exercise's id, or {@link LogEntry#BREAK}
   * @param planned how long the agenda gave it, if it was planned
   * @param start when it began
   * @param end when it was over; nothing while it runs
   */
  public record Run(
      String item, Optional<Duration> planned, OffsetDateTime start, Optional<OffsetDateTime> end) {
    /** Whether it is a break or a meal. */
    public boolean isBreak() {
      return item.equals(LogEntry.BREAK);
    }

    /** How long it took; nothing while it runs. */
    public Optional<Duration> took() {
      return end.map(time -> Duration.between(start, time));
    }
  }

  /**
   * Refuses an entry that is earlier than the one before, starts something while something runs,
   * ends what does not run, or undoes where nothing is left. Linear in the entries.
   */
  public Progress {
    entries = List.copyOf(entries);
    replay(entries);
  }

  /** A day on which nothing has happened yet. */
  public static Progress of(Workshop workshop) {
    return new Progress(workshop, List.of());
  }

  /**
   * This and one entry more.
   *
   * @throws InvalidValueException if the entry cannot follow; see the constructor
   */
  public Progress with(LogEntry entry) {
    List<LogEntry> more = new ArrayList<>(entries);
    more.add(entry);
    return new Progress(workshop, more);
  }

  /** The entries that hold: without what was undone, and without the undoing. */
  public List<LogEntry> standing() {
    return List.copyOf(replay(entries));
  }

  /** What has run and what runs, in order. Something that is taken up again is two runs. */
  public List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (LogEntry entry : replay(entries)) {
      if (entry instanceof Started started) {
        runs.add(new Run(started.item(), started.planned(), started.at(), Optional.empty()));
      } else if (entry instanceof Ended ended) {
        Run run = runs.remove(runs.size() - 1);
        runs.add(new Run(run.item(), run.planned(), run.start(), Optional.of(ended.at())));
      }
    }
    return List.copyOf(runs);
  }

  /** What runs now. */
  public Optional<Run> running() {
    List<Run> runs = runs();
    return runs.isEmpty()
        ? Optional.empty()
        : Optional.of(runs.get(runs.size() - 1)).filter(run -> run.end().isEmpty());
  }

  /** The plan that was agreed upon last; nothing while the day follows its agenda. */
  public Optional<Agenda> agreed() {
    return standing().stream()
        .filter(Agreed.class::isInstance)
        .reduce((one, next) -> next)
        .map(entry -> ((Agreed) entry).plan());
  }

  /**
   * The time, or that of the last entry where it is later: a clock may be put back during the day.
   */
  public OffsetDateTime notBefore(OffsetDateTime time) {
    if (entries.isEmpty()) {
      return time;
    }
    OffsetDateTime last = entries.get(entries.size() - 1).at();
    return time.isBefore(last) ? last : time;
  }

  /** The entries that stand at the end, checked one by one. */
  private static List<LogEntry> replay(List<LogEntry> entries) {
    Deque<LogEntry> standing = new ArrayDeque<>();
    Deque<String> items = new ArrayDeque<>();
    for (int i = 0; i < entries.size(); i++) {
      LogEntry entry = entries.get(i);
      String place = "entries[" + i + "]";
      if (i > 0 && entry.at().isBefore(entries.get(i - 1).at())) {
        throw new InvalidValueException(
            place + ".at",
            entry.at(),
            "no earlier than the entry before, " + entries.get(i - 1).at());
      }
      if (entry instanceof Undo) {
        if (standing.isEmpty()) {
          throw new InvalidValueException(place + ".undo", "true", "there is nothing left to undo");
        }
        takeBack(standing.removeLast(), items);
        continue;
      }
      apply(entry, place, items);
      standing.add(entry);
    }
    return new ArrayList<>(standing);
  }

  /** Keeps what runs: a name for each start, an empty one on top for each end. */
  private static void apply(LogEntry entry, String place, Deque<String> items) {
    String running = items.isEmpty() ? "" : items.getLast();
    if (entry instanceof Started started) {
      if (!running.isEmpty()) {
        throw new InvalidValueException(
            place + ".started", started.item(), running + " still runs; end it first");
      }
      items.add(started.item());
    } else if (entry instanceof Ended ended) {
      if (!running.equals(ended.item())) {
        throw new InvalidValueException(
            place + ".ended",
            ended.item(),
            running.isEmpty() ? "nothing runs; start it first" : "what runs is " + running);
      }
      items.add("");
    }
  }

  private static void takeBack(LogEntry entry, Deque<String> items) {
    if (entry instanceof Started || entry instanceof Ended) {
      items.removeLast();
    }
  }
}
