package org.arcwright.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;
import org.arcwright.live.Progress.Run;
import org.arcwright.live.Progress.Workshop;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static final OffsetDateTime NINE = OffsetDateTime.parse("2026-12-03T09:00:00+01:00");
  private static final Progress NOTHING =
      Progress.of(new Workshop("Winter planning", Mode.REMOTE, 12, Optional.empty()));

  @Test
  void what_ran_and_what_runs() {
    Progress day =
        NOTHING
            .with(started(0, "weather-report"))
            .with(ended(12, "weather-report"))
            .with(started(12, "break"))
            .with(ended(25, "break"))
            .with(started(26, "chat-burst"));

    assertThat(day.runs())
        .extracting(Run::item, Run::isBreak, Run::took)
        .containsExactly(
            tuple("weather-report", false, minutes(12)),
            tuple("break", true, minutes(13)),
            tuple("chat-burst", false, Optional.empty()));
    assertThat(day.running().map(Run::item)).contains("chat-burst");
    assertThat(NOTHING.running()).isEmpty();
  }

  @Test
  void undoing_steps_back_one_entry_each_time() {
    Progress day = NOTHING.with(started(0, "a")).with(ended(9, "a")).with(started(9, "b"));

    Progress once = day.with(new Undo(NINE.plusMinutes(10)));
    Progress twice = once.with(new Undo(NINE.plusMinutes(10)));

    assertThat(once.running()).isEmpty();
    assertThat(twice.running().map(Run::item)).contains("a");
    assertThat(twice.entries()).hasSize(5);
    assertThat(twice.with(ended(11, "a")).runs().get(0).took()).isEqualTo(minutes(11));
  }

  @Test
  void there_must_be_something_to_undo() {
    assertThatThrownBy(() -> NOTHING.with(new Undo(NINE)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("entries[0].undo is true: there is nothing left to undo");
  }

  @Test
  void something_may_be_taken_up_again() {
    Progress day =
        NOTHING
            .with(started(0, "a"))
            .with(ended(5, "a"))
            .with(started(10, "a"))
            .with(ended(20, "a"));

    assertThat(day.runs()).hasSize(2);
  }

  @Test
  void a_clock_that_was_put_back_is_held() {
    Progress day = NOTHING.with(started(30, "a"));

    assertThat(day.notBefore(NINE)).isEqualTo(NINE.plusMinutes(30));
    assertThat(day.notBefore(NINE.plusMinutes(31))).isEqualTo(NINE.plusMinutes(31));
    assertThatThrownBy(() -> day.with(ended(29, "a"))).hasMessageContaining("no earlier than");
  }

  /** Against the plainest reading there is: keep a list, and strike its last when undoing. */
  @Test
  void any_day_stands_as_if_what_was_undone_had_never_been() {
    Random random = new Random(635);
    for (int day = 0; day < 300; day++) {
      Progress progress = NOTHING;
      Deque<LogEntry> plain = new ArrayDeque<>();
      for (int minute = 0; minute < 40; minute++) {
        LogEntry entry = any(random, minute, progress);
        if (entry instanceof Undo && plain.isEmpty()) {
          continue;
        }
        progress = progress.with(entry);
        if (entry instanceof Undo) {
          plain.removeLast();
        } else {
          plain.add(entry);
        }
      }
      assertThat(progress.standing()).isEqualTo(new ArrayList<>(plain));
      assertThat(progress.runs())
          .isEqualTo(new Progress(progress.workshop(), List.copyOf(plain)).runs());
    }
  }

  private static LogEntry any(Random random, int minute, Progress progress) {
    Optional<String> running = progress.running().map(Run::item);
    return switch (random.nextInt(4)) {
      case 0 -> new Note(NINE.plusMinutes(minute), "note");
      case 1 -> new Undo(NINE.plusMinutes(minute));
      default ->
          running.isPresent()
              ? ended(minute, running.get())
              : started(minute, "item-" + random.nextInt(3));
    };
  }

  private static Started started(int minute, String item) {
    return new Started(NINE.plusMinutes(minute), item, Optional.empty());
  }

  private static Ended ended(int minute, String item) {
    return new Ended(NINE.plusMinutes(minute), item);
  }

  private static Optional<Duration> minutes(int minutes) {
    return Optional.of(Duration.ofMinutes(minutes));
  }
}
