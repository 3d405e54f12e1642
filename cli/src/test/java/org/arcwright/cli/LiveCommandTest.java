package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Mode;
import org.arcwright.live.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys and screens are {@link LiveDeskTest}'s. */
class LiveCommandTest {
  @TempDir Path folder;

  @Test
  void where_there_is_no_terminal_nothing_is_begun() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    Path agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);

    Run run = Run.of("live", agenda);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("live needs a terminal that it can draw upon");
    assertThat(folder.resolve("agenda.jsonl")).doesNotExist();
  }

  @Test
  void a_day_is_a_rehearsal_if_said_so_or_if_it_is_planned_for_another() {
    Agenda nineOClock =
        planned(Optional.of(ZonedDateTime.parse("2027-03-02T09:00+01:00[Europe/Vienna]")));
    ZonedDateTime late = ZonedDateTime.parse("2027-03-02T09:04:30+01:00[Europe/Vienna]");
    ZonedDateTime daysBefore = ZonedDateTime.parse("2027-02-26T14:15:30+01:00[Europe/Vienna]");

    Progress.Workshop day = LiveCommand.workshop(nineOClock, late, false);
    Progress.Workshop tryOut = LiveCommand.workshop(nineOClock, late, true);
    Progress.Workshop before = LiveCommand.workshop(nineOClock, daysBefore, false);

    assertThat(day.rehearsal()).isFalse();
    assertThat(day.start()).isEqualTo(nineOClock.start());
    assertThat(tryOut.rehearsal()).isTrue();
    assertThat(before.rehearsal()).isTrue();
    assertThat(before.start())
        .contains(ZonedDateTime.parse("2027-02-26T14:15+01:00[Europe/Vienna]"));
  }

  @Test
  void an_agenda_without_a_date_begins_with_the_minute() {
    ZonedDateTime now = ZonedDateTime.parse("2027-02-26T14:15:30+01:00[Europe/Vienna]");

    Progress.Workshop day = LiveCommand.workshop(planned(Optional.empty()), now, false);

    assertThat(day.rehearsal()).isFalse();
    assertThat(day.start()).contains(ZonedDateTime.parse("2027-02-26T14:15+01:00[Europe/Vienna]"));
  }

  private static Agenda planned(Optional<ZonedDateTime> start) {
    Duration hour = Duration.ofMinutes(60);
    List<AgendaItem> items = List.of(new AgendaItem.Pause(Duration.ZERO, hour, false));
    return new Agenda(
        "Ideas for the open day",
        "generate-ideas",
        Mode.REMOTE,
        5,
        hour,
        start,
        List.of(),
        items,
        Duration.ZERO,
        List.of(),
        Figures.of(items, List.of(), hour));
  }
}
