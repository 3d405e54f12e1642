package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.search.Limit;
import org.arcwright.library.BuiltIn;
import org.arcwright.live.Day;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.EnergyCheck;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;
import org.arcwright.live.Replanner;
import org.junit.jupiter.api.Test;

/** A day at the keys, without a terminal. */
class LiveDeskTest {
  private static final ZonedDateTime NINE =
      ZonedDateTime.parse("2027-03-02T09:00+01:00[Europe/Vienna]");
  private static final Catalog CATALOG = BuiltIn.catalog();
  private static final Brief BRIEF =
      Brief.builder("Open day", "generate-ideas", Mode.REMOTE, 5, Duration.ofHours(2))
          .start(NINE)
          .build();
  private static final Agenda AGENDA =
      ((Composed) Composer.of(CATALOG).compose(BRIEF, Budget.USUAL)).agenda();

  private Progress progress =
      Progress.of(new Workshop("Open day", Mode.REMOTE, 5, Optional.of(NINE)));
  private final LiveDesk desk =
      new LiveDesk(
          new Day(AGENDA, progress),
          BRIEF,
          CATALOG,
          (plan, stand) -> Replanner.of(CATALOG).replan(BRIEF, plan, stand, Set.of(), Limit.NONE));

  @Test
  void shows_what_now_and_what_next_and_how_time_stands() {
    assertThat(screen(0)).contains("Open day", "not begun yet", "next", "Enter done");

    press(3, LiveDesk.ENTER);

    String first = AGENDA.activities().get(0).title();
    assertThat(screen(5)).contains("now   " + first, " left", "3 min behind", "since 09:03");
    assertThat(screen(60)).contains(" over", " behind");
  }

  @Test
  void before_the_first_item_nobody_is_behind() {
    assertThat(screen(-12))
        .contains("08:48", "not begun yet, planned for 09:00, in 12 min", "next  09:00")
        .contains("Ends at ")
        .doesNotContain("behind", "ahead");
    assertThat(screen(0)).doesNotContain("planned for", "behind");
    assertThat(screen(7))
        .contains("not begun yet, planned for 09:00, 7 min ago", "next  09:07")
        .contains("Begun now, it ends at ")
        .doesNotContain("behind");
  }

  @Test
  void a_minute_is_neither_late_nor_early() {
    press(1, LiveDesk.ENTER);

    assertThat(screen(2)).contains("as things stand, on time;");
    int over = 1 + (int) AGENDA.activities().get(0).length().toMinutes();
    assertThat(screen(over + 1)).contains("as things stand, 2 min behind;");
  }

  @Test
  void the_ways_fit_on_the_screen_with_what_to_press() {
    press(0, LiveDesk.ENTER);
    for (int minute = 20; minute < 100; minute += 8) {
      press(minute, 'r');
      List<String> lines = screen(minute).lines().toList();
      assertThat(lines).as("after %d minutes", minute).hasSizeLessThanOrEqualTo(24);
      assertThat(lines.get(lines.size() - 1)).endsWith("Esc back");
      press(minute, LiveDesk.ESCAPE);
    }
  }

  @Test
  void before_the_start_and_after_the_end_there_is_nothing_to_replan() {
    press(-5, 'r');
    assertThat(screen(-5)).contains("Nothing has slipped yet: the day begins at 09:00.");

    press(0, LiveDesk.ENTER);
    press(121, 'r');
    assertThat(screen(121)).contains("The end at 11:00 is past.", "replan --done LOG --end TIME");
    assertThat(screen(121).lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void half_a_letter_waits_for_the_other_half() {
    press(1, 'n');
    press(1, Character.highSurrogate(0x1F642));

    assertThat(screen(1)).endsWith("note: ");
    press(1, Character.lowSurrogate(0x1F642));
    assertThat(screen(1)).endsWith("note: \uD83D\uDE42");
  }

  @Test
  void no_line_is_wider_than_the_screen() {
    press(3, LiveDesk.ENTER);
    type(4, "n" + "a long note ".repeat(20) + "\r");

    assertThat(screen(5).lines()).allMatch(line -> line.length() <= 80);
    press(70, 'r');
    assertThat(screen(70).lines()).allMatch(line -> line.length() <= 80);
    assertThat(screen(70).lines()).hasSizeLessThanOrEqualTo(24);
  }

  @Test
  void notes_are_typed_mended_and_given_up() {
    type(1, "nhallp\u007fo\r");
    type(2, "nnever mind\u001b");
    type(3, "n  \r");

    assertThat(progress.entries()).containsExactly(new Note(at(1), "hallo"));
  }

  @Test
  void figures_are_energy_checks() {
    press(1, '4');

    assertThat(progress.entries()).containsExactly(new EnergyCheck(at(1), 4));
    assertThat(screen(2)).contains("last: 09:01 energy 4 of 5");
  }

  @Test
  void undo_says_so() {
    press(1, 'u');
    assertThat(screen(1)).contains("There is nothing to undo.");

    press(2, LiveDesk.ENTER);
    press(3, 'u');

    String first = AGENDA.activities().get(0).title();
    assertThat(screen(3)).contains("Undone: \"" + first + "\" begun", "not begun yet");
  }

  @Test
  void a_way_that_is_agreed_is_written_down_and_followed() {
    press(0, LiveDesk.ENTER);
    press(60, 'r');
    assertThat(screen(60)).contains("It is 10:00, and you are", "agree on that way   Esc back");

    press(60, '1');

    LogEntry last = progress.entries().get(progress.entries().size() - 1);
    assertThat(last).isInstanceOf(Agreed.class);
    assertThat(screen(60)).contains("Agreed.", "on time");
  }

  @Test
  void escape_leads_back_from_the_ways_and_nothing_is_written() {
    press(0, LiveDesk.ENTER);
    press(60, 'r');
    press(60, LiveDesk.ESCAPE);

    assertThat(screen(60)).contains("Enter done");
    assertThat(progress.entries()).hasSize(1);
  }

  @Test
  void leaving_ends_it() {
    press(0, 'q');

    assertThat(desk.isLeft()).isTrue();
  }

  private void type(int minute, String keys) {
    keys.chars().forEach(key -> press(minute, key));
  }

  private void press(int minute, int key) {
    for (LogEntry entry : desk.press(key, at(minute))) {
      progress = progress.with(entry);
    }
    desk.goOn(progress);
  }

  private String screen(int minute) {
    List<String> lines = desk.screen(at(minute), Marks.UNICODE, Style.PLAIN, 80, 24);
    return String.join("\n", lines);
  }

  private static OffsetDateTime at(int minute) {
    return NINE.toOffsetDateTime().plusMinutes(minute);
  }
}
