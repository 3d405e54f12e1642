package org.arcwright.live;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.Limit;
import org.arcwright.format.LogFile;
import org.arcwright.format.LogFormat;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.Progress.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day of three hours that begins at nine, as it is run. */
class DayTest {
  private static final ZonedDateTime NINE =
      ZonedDateTime.parse("2027-03-02T09:00+01:00[Europe/Vienna]");
  private static final Brief BRIEF = Sample.brief(180).start(NINE).build();
  private static final Agenda AGENDA =
      ((Composed) Composer.of(Sample.catalog()).compose(BRIEF, Budget.USUAL)).agenda();
  private static final Workshop WORKSHOP =
      new Workshop(AGENDA.title(), AGENDA.mode(), AGENDA.people(), AGENDA.start());
  private static final Day MORNING = new Day(AGENDA, Progress.of(WORKSHOP));

  @TempDir Path folder;

  @Test
  void one_move_ends_what_runs_and_begins_what_comes_next() {
    Day begun = moved(MORNING, MORNING.onward(at(0)));
    Day second = moved(begun, begun.onward(at(12)));

    assertThat(begun.runningItem()).contains(AGENDA.items().get(0));
    assertThat(second.runningItem()).contains(AGENDA.items().get(1));
    assertThat(second.progress().runs().get(0).took()).contains(minutes(12));
    assertThat(second.progress().entries()).hasSize(3);
  }

  @Test
  void undo_takes_back_a_whole_move() {
    Day begun = moved(MORNING, MORNING.onward(at(0)));
    Day second = moved(begun, begun.onward(at(12)));

    Day back = moved(second, second.undo(at(13)));

    assertThat(back.progress().standing()).isEqualTo(begun.progress().standing());
    assertThat(back.runningItem()).contains(AGENDA.items().get(0));
    assertThat(MORNING.undo(at(0))).isEmpty();
  }

  @Test
  void what_is_left_and_how_far_behind_follow_from_the_clock() {
    Duration first = AGENDA.items().get(0).length();
    Day begun = moved(MORNING, MORNING.onward(at(5)));

    assertThat(begun.left(at(7))).contains(first.minusMinutes(2));
    assertThat(begun.behind(at(7))).isEqualTo(minutes(5));
    assertThat(begun.end(at(7))).isEqualTo(AGENDA.end().plusMinutes(5));
    OffsetDateTime over = at(5).plus(first).plusMinutes(4);
    assertThat(begun.left(over)).contains(minutes(-4));
    assertThat(begun.behind(over)).isEqualTo(minutes(9));
  }

  @Test
  void each_item_has_its_turn_until_all_is_done() {
    Day day = MORNING;
    OffsetDateTime now = at(0);
    for (int i = 0; i < AGENDA.items().size(); i++) {
      day = moved(day, day.onward(now));
      assertThat(day.runningItem()).contains(AGENDA.items().get(i));
      now = now.plus(AGENDA.items().get(i).length());
    }
    assertThat(day.behind(now)).isZero();
    day = moved(day, day.onward(now));

    assertThat(day.running()).isEmpty();
    assertThat(day.ahead(now)).isEmpty();
    assertThat(day.onward(now)).isEmpty();
  }

  @Test
  void after_another_plan_is_agreed_the_day_follows_it() {
    Day late = late();
    OffsetDateTime now = at(100);
    Way way = ways(late, now).get(0);

    Day agreed = moved(late, List.of(new Agreed(now, way.agenda())));

    assertThat(agreed.plan()).isEqualTo(way.agenda());
    assertThat(agreed.running()).isEqualTo(late.running());
    assertThat(agreed.end(now)).isLessThanOrEqualTo(AGENDA.cap());
    assertThat(agreed.ahead(now).stream().map(Day.Ahead::item))
        .containsExactlyElementsOf(
            way.agenda().items().stream()
                .filter(item -> item.start().compareTo(minutes(100)) > 0)
                .toList());
    assertThat(moved(agreed, agreed.undo(now)).plan()).isEqualTo(AGENDA);
  }

  /** As after {@code kill -9}: whatever was on the disk, the day stands as its last whole line. */
  @Test
  void a_log_that_is_cut_after_any_byte_leads_to_the_day_as_of_its_last_whole_line()
      throws IOException {
    Day late = late();
    Way way = ways(late, at(100)).get(0);
    Day whole = moved(late, List.of(new Agreed(at(100), way.agenda())));
    whole = moved(whole, whole.onward(at(101)));
    whole = moved(whole, List.of(new Note(at(102), "Zwei fehlen: \"Züge\"")));
    byte[] all = LogFormat.write(whole.progress()).getBytes(UTF_8);
    List<Day> days = new ArrayList<>(List.of(MORNING));
    for (LogEntry entry : whole.progress().entries()) {
      days.add(moved(days.get(days.size() - 1), List.of(entry)));
    }
    Path file = folder.resolve("day.log");

    for (int length = 0; length <= all.length; length++) {
      byte[] cut = Arrays.copyOf(all, length);
      Files.write(file, cut);
      long lines = new String(cut, UTF_8).lines().filter(DayTest::isWhole).count();

      try (LogFile log = LogFile.open(file, WORKSHOP)) {
        assertThat(MORNING.with(log.progress()))
            .as("cut after %d bytes", length)
            .isEqualTo(days.get((int) Math.max(0, lines - 1)));
      }
    }
  }

  /** Whether every brace and bracket of a line is closed; no text in the sample has one. */
  private static boolean isWhole(String line) {
    return !line.isEmpty()
        && line.chars().filter(c -> c == '{').count() == line.chars().filter(c -> c == '}').count()
        && line.endsWith("}");
  }

  /** The third exercise runs and should have been over long ago. */
  private static Day late() {
    Day day = MORNING;
    for (int minute : new int[] {0, 15, 60}) {
      day = moved(day, day.onward(at(minute)));
    }
    return day;
  }

  private static List<Way> ways(Day day, OffsetDateTime now) {
    return Replanner.of(Sample.catalog())
        .replan(BRIEF, day.plan(), day.stand(now, AGENDA.cap()), Set.of(), Limit.NONE)
        .ways();
  }

  private static Day moved(Day day, List<LogEntry> entries) {
    Progress progress = day.progress();
    for (LogEntry entry : entries) {
      progress = progress.with(entry);
    }
    return day.with(progress);
  }

  private static OffsetDateTime at(int minute) {
    return NINE.toOffsetDateTime().plusMinutes(minute);
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
