package org.arcwright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Mode;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;
import org.junit.jupiter.api.Test;

/** What a day's log is as a record. */
class WorkshopRecordTest {
  private static final Optional<ZonedDateTime> PLANNED =
      Optional.of(ZonedDateTime.parse("2026-12-03T09:30+01:00[Europe/Vienna]"));

  private static WorkshopRecord record(Optional<ZonedDateTime> start, LogEntry... entries) {
    Workshop workshop = new Workshop("Winter planning", Mode.REMOTE, 9, start);
    return WorkshopRecord.of(new Progress(workshop, List.of(entries)));
  }

  private static OffsetDateTime at(String time) {
    return OffsetDateTime.parse(time + "+01:00");
  }

  private static Happening happening(String item, int from, int to) {
    return new Happening(
        item, Optional.empty(), Duration.ofMinutes(from), Duration.ofMinutes(to), Optional.empty());
  }

  @Test
  void times_are_told_to_the_nearest_minute_from_the_planned_start() {
    WorkshopRecord record =
        record(
            PLANNED,
            new Started(at("2026-12-03T09:27:40"), "weather-report", Optional.empty()),
            new Ended(at("2026-12-03T09:36:29"), "weather-report"),
            new Started(at("2026-12-03T09:36:30"), "break", Optional.empty()),
            new Ended(at("2026-12-03T09:40:00"), "break"));

    assertThat(record.happened())
        .containsExactly(happening("weather-report", -2, 6), happening("break", 7, 10));
  }

  @Test
  void what_was_decided_noted_and_taken_back() {
    WorkshopRecord record =
        record(
            PLANNED,
            new Note(at("2026-12-03T09:31:00"), "Two come later."),
            new LogEntry.Decision(at("2026-12-03T10:00:00"), "We lend tents."),
            new Undo(at("2026-12-03T10:00:05")),
            new LogEntry.Decision(at("2026-12-03T10:01:00"), "We lend repair kits."));

    assertThat(record.decisions()).containsExactly(Decision.of("We lend repair kits."));
    assertThat(record.remarks())
        .containsExactly(new Remark(Duration.ofMinutes(1), "Two come later."));
  }

  @Test
  void what_still_runs_ends_with_the_last_entry_and_a_slip_of_seconds_is_nothing() {
    WorkshopRecord record =
        record(
            PLANNED,
            new Started(at("2026-12-03T09:30:00"), "weather-report", Optional.empty()),
            new Ended(at("2026-12-03T09:30:10"), "weather-report"),
            new Started(at("2026-12-03T09:30:12"), "word-cloud", Optional.empty()),
            new Note(at("2026-12-03T09:41:00"), "Lively."));

    assertThat(record.happened()).containsExactly(happening("word-cloud", 0, 11));
  }

  @Test
  void a_day_that_was_moved_counts_from_its_first_entry() {
    Started first = new Started(at("2026-12-10T14:02:30"), "weather-report", Optional.empty());
    Ended end = new Ended(at("2026-12-10T14:12:00"), "weather-report");

    WorkshopRecord moved = record(PLANNED, first, end);
    WorkshopRecord unplanned = record(Optional.empty(), first, end);

    assertThat(moved.workshop().start())
        .contains(ZonedDateTime.parse("2026-12-10T14:02+01:00[Europe/Vienna]"));
    assertThat(moved.happened()).containsExactly(happening("weather-report", 1, 10));
    assertThat(unplanned.happened()).isEqualTo(moved.happened());
  }

  @Test
  void an_empty_log_is_an_empty_record() {
    assertThat(record(Optional.empty()).happened()).isEmpty();
    assertThat(record(PLANNED).workshop().start()).isEqualTo(PLANNED);
  }

  @Test
  void nothing_happens_twice_at_once_nor_hours_before() {
    WorkshopRecord empty = record(PLANNED);

    assertThatThrownBy(
            () ->
                new WorkshopRecord(
                    empty.workshop(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(happening("a", 0, 20), happening("b", 19, 30)),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    After.USUAL))
        .hasMessage(
            "happened[1].from is 19 min after the start: what stands before it ends later; mend"
                + " one of the two");
    assertThatThrownBy(() -> happening("a", -61, 20))
        .hasMessage("from is 61 min before the start: at most an hour is right");
    assertThatThrownBy(() -> happening("a", 20, 20))
        .hasMessage("to is 20 min after the start: it ends after it begins");
  }
}
