package org.arcwright.live;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;

/**
 * A day that is being run: what was planned, and what has happened. Immutable; whoever runs it
 * writes down the entries that a move comes to, and goes on with the progress that has them.
 *
 * @param planned the agenda with which the day began
 * @param progress what has happened
 */
public record Day(Agenda planned, Progress progress) {
  /**
   * What is still to come.
   *
   * @param item as planned
   * @param start when it begins if all goes on as planned, from the planned start
   */
  public record Ahead(AgendaItem item, Duration start) {}

  /** The same day with more progress. */
  public Day with(Progress more) {
    return new Day(planned, more);
  }

  /** What the day follows: the agenda, or what was agreed upon last. */
  public Agenda plan() {
    return progress.agreed().orElse(planned);
  }

  /** Where it stands. */
  public Stand stand(OffsetDateTime now, Duration end) {
    return Stand.of(plan(), progress, progress.notBefore(now), end);
  }

  /** How long ago the day was to start. */
  public Duration since(OffsetDateTime now) {
    return Duration.between(
        Stand.zero(plan(), progress).orElse(progress.notBefore(now)), progress.notBefore(now));
  }

  /** What runs now. */
  public Optional<Progress.Run> running() {
    return progress.running();
  }

  /** The item of the plan that runs now, if it was planned. */
  public Optional<AgendaItem> runningItem() {
    int begun = begun();
    return running().isEmpty() || begun == 0
        ? Optional.empty()
        : Optional.of(plan().items().get(begun - 1))
            .filter(item -> Stand.name(item).equals(running().orElseThrow().item()));
  }

  /** How long what runs may take by the plan; nothing if it was not planned. */
  public Optional<Duration> allowed() {
    return runningItem().map(AgendaItem::length).or(() -> running().flatMap(Progress.Run::planned));
  }

  /** How long what runs has left of that; negative once it is over. */
  public Optional<Duration> left(OffsetDateTime now) {
    Duration ran =
        running()
            .map(run -> Duration.between(run.start(), progress.notBefore(now)))
            .orElse(Duration.ZERO);
    return allowed().map(allowed -> allowed.minus(ran));
  }

  /**
   * What is still to come, each item as soon as the one before is over, the first one no earlier
   * than planned.
   */
  public List<Ahead> ahead(OffsetDateTime now) {
    Duration free = since(now);
    free = free.isNegative() && progress.runs().isEmpty() ? Duration.ZERO : free;
    Duration left = left(now).orElse(Duration.ZERO);
    free = left.isNegative() ? free : free.plus(left);
    List<Ahead> ahead = new ArrayList<>();
    for (AgendaItem item : plan().items().subList(begun(), plan().items().size())) {
      ahead.add(new Ahead(item, free));
      free = free.plus(item.length());
    }
    return ahead;
  }

  /** When the day ends if all goes on as planned, from the planned start. */
  public Duration end(OffsetDateTime now) {
    List<Ahead> ahead = ahead(now);
    if (!ahead.isEmpty()) {
      Ahead last = ahead.get(ahead.size() - 1);
      return last.start().plus(last.item().length());
    }
    Duration left = left(now).orElse(Duration.ZERO);
    return since(now).plus(left.isNegative() ? Duration.ZERO : left);
  }

  /** How far behind its plan the day is; negative when it is ahead. */
  public Duration behind(OffsetDateTime now) {
    return end(now).minus(plan().end());
  }

  /** To end what runs and begin what comes next. */
  public List<LogEntry> onward(OffsetDateTime now) {
    List<LogEntry> entries = new ArrayList<>(stop(now));
    List<Ahead> ahead = ahead(now);
    if (!ahead.isEmpty()) {
      AgendaItem next = ahead.get(0).item();
      OffsetDateTime at = progress.notBefore(now);
      entries.add(new Started(at, Stand.name(next), Optional.of(next.length())));
    }
    return entries;
  }

  /** To end what runs, and begin nothing yet. */
  public List<LogEntry> stop(OffsetDateTime now) {
    OffsetDateTime at = progress.notBefore(now);
    return running().stream().<LogEntry>map(run -> new Ended(at, run.item())).toList();
  }

  /** To take back the last move, which may have been two entries of the same moment. */
  public List<LogEntry> undo(OffsetDateTime now) {
    List<LogEntry> standing = progress.standing();
    if (standing.isEmpty()) {
      return List.of();
    }
    LogEntry last = standing.get(standing.size() - 1);
    boolean two =
        standing.size() > 1
            && last instanceof Started
            && standing.get(standing.size() - 2) instanceof Ended ended
            && ended.at().equals(last.at());
    return Collections.nCopies(two ? 2 : 1, new Undo(progress.notBefore(now)));
  }

  private int begun() {
    List<Stand.Past> past =
        Stand.zero(plan(), progress).map(zero -> Stand.past(progress, zero)).orElse(List.of());
    return Stand.begun(plan(), past);
  }
}
