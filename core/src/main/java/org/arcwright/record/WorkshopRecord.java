package org.arcwright.record;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;

/**
 * What came of one workshop.
 *
 * @param workshop which it was
 * @param sponsor who asked for it
 * @param outcome what it came to, in a sentence or two
 * @param happened exercises and breaks in order, none beginning before the one before ends
 * @param decisions in order
 * @param votes that led to no decision
 * @param openPoints what was not settled
 * @param parkingLot what was put aside
 * @param takeaways in people's words
 * @param actions who does what by when
 * @param thanks whom to thank, and for what
 * @param remarks notes of the day
 * @param after what is arranged for the time after
 */
public record WorkshopRecord(
    Workshop workshop,
    Optional<String> sponsor,
    Optional<String> outcome,
    List<Happening> happened,
    List<Decision> decisions,
    List<Vote> votes,
    List<Point> openPoints,
    List<Point> parkingLot,
    List<Takeaway> takeaways,
    List<Action> actions,
    List<String> thanks,
    List<Remark> remarks,
    After after) {
  /** Refuses what overlaps, and empty texts. */
  public WorkshopRecord {
    sponsor = sponsor.map(text -> Checks.text("sponsor", text, 120));
    outcome = outcome.map(text -> Checks.text("outcome", text, 1000));
    happened = List.copyOf(happened);
    decisions = List.copyOf(decisions);
    votes = List.copyOf(votes);
    openPoints = List.copyOf(openPoints);
    parkingLot = List.copyOf(parkingLot);
    takeaways = List.copyOf(takeaways);
    actions = List.copyOf(actions);
    thanks = Checks.lines("thanks", thanks, 400);
    remarks = List.copyOf(remarks);
    for (int i = 1; i < happened.size(); i++) {
      if (happened.get(i).from().compareTo(happened.get(i - 1).to()) < 0) {
        throw new InvalidValueException(
            "happened[" + i + "].from",
            happened.get(i).from().toMinutes() + " min after the start",
            "what stands before it ends later; mend one of the two");
      }
    }
  }

  /**
   * What a day's log says: when things happened, to the minute, what was decided and noted. What
   * still ran when the log ended counts as ended with its last entry. A day that did not begin
   * between an hour before its planned start and a day after it counts from its first entry.
   */
  public static WorkshopRecord of(Progress progress) {
    List<LogEntry> entries = progress.standing();
    Optional<ZonedDateTime> start = start(progress.workshop(), entries);
    List<Happening> happened = new ArrayList<>();
    for (Progress.Run run : progress.runs()) {
      Duration from = after(start, run.start());
      Duration to = after(start, run.end().orElse(entries.get(entries.size() - 1).at()));
      if (to.compareTo(from) > 0) {
        happened.add(new Happening(run.item(), Optional.empty(), from, to, Optional.empty()));
      }
    }
    List<Decision> decisions = new ArrayList<>();
    List<Remark> remarks = new ArrayList<>();
    for (LogEntry entry : entries) {
      if (entry instanceof LogEntry.Decision decision) {
        decisions.add(Decision.of(decision.text()));
      } else if (entry instanceof LogEntry.Note note) {
        remarks.add(new Remark(after(start, note.at()), note.text()));
      }
    }
    Workshop planned = progress.workshop();
    return new WorkshopRecord(
        new Workshop(planned.title(), planned.mode(), planned.people(), start),
        Optional.empty(),
        Optional.empty(),
        happened,
        decisions,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        remarks,
        After.USUAL);
  }

  private static Optional<ZonedDateTime> start(Workshop workshop, List<LogEntry> entries) {
    Optional<ZonedDateTime> planned = workshop.start();
    if (entries.isEmpty()) {
      return planned;
    }
    OffsetDateTime first = entries.get(0).at();
    return planned
        .filter(
            start -> {
              Duration late = after(planned, first);
              return late.compareTo(Happening.EARLIEST) >= 0
                  && late.compareTo(Duration.ofDays(1)) < 0;
            })
        .or(
            () ->
                Optional.of(
                    first
                        .atZoneSameInstant(
                            planned.map(ZonedDateTime::getZone).orElse(first.getOffset()))
                        .truncatedTo(ChronoUnit.MINUTES)));
  }

  /** To the nearest minute, as people write times. */
  private static Duration after(Optional<ZonedDateTime> start, OffsetDateTime time) {
    long seconds = Duration.between(start.orElseThrow().toOffsetDateTime(), time).toSeconds();
    return Duration.ofMinutes(Math.floorDiv(seconds + 30, 60L));
  }

  /** All votes, those that led to decisions first. */
  public List<Vote> allVotes() {
    return Stream.concat(
            decisions.stream().flatMap(decision -> decision.votes().stream()), votes.stream())
        .toList();
  }
}
