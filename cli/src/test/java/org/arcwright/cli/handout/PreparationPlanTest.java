package org.arcwright.cli.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.words.Language;
import org.arcwright.library.BuiltIn;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is to be done before the day, by what the day needs. */
class PreparationPlanTest {
  /** A round on a call, which needs no board. */
  private static final Workshop ROUND = round();

  @Test
  void a_board_that_only_a_stand_in_needs_is_prepared_as_a_spare() {
    assertThat(tasks(standIn("board")))
        .filteredOn(task -> task.text().endsWith("board"))
        .singleElement()
        .satisfies(
            task -> {
              assertThat(task.text()).isEqualTo("Build a spare board");
              assertThat(task.more()).contains("“A wall of notes”");
            });
  }

  @Test
  void without_such_a_stand_in_there_is_no_board_to_prepare() {
    assertThat(tasks(standIn("document")))
        .extracting(Cell::text)
        .contains("Rehearse together")
        .noneMatch(text -> text.endsWith("board"));
  }

  @ParameterizedTest
  @CsvSource({
    "2027-03-05, 3, 2027-03-02", // Friday to Tuesday
    "2027-03-01, 1, 2027-02-26", // Monday to Friday
    "2027-03-07, 1, 2027-03-05", // Sunday to Friday
    "2027-03-02, 0, 2027-03-02",
  })
  void days_before_are_working_days(LocalDate day, int before, LocalDate then) {
    assertThat(PreparationPlan.before(day, before)).isEqualTo(then);
  }

  private static List<Cell> tasks(StandIns standIns) {
    return PreparationPlan.of(ROUND, standIns).blocks().stream()
        .filter(Table.class::isInstance)
        .flatMap(block -> ((Table) block).rows().stream())
        .map(row -> row.get(1))
        .toList();
  }

  private static StandIns standIn(String tool) {
    StandIn wall =
        new StandIn(
            "wall-of-notes",
            "A wall of notes",
            Duration.ofMinutes(10),
            Duration.ZERO,
            20,
            Set.of(tool),
            List.of());
    ToolLoss loss = new ToolLoss("call", List.of(new Swap(0, Optional.of(wall))));
    return new StandIns(ROUND.agenda(), List.of(loss), List.of(), List.of(), List.of());
  }

  private static Workshop round() {
    Duration length = Duration.ofMinutes(10);
    List<AgendaItem> items =
        List.of(
            new AgendaItem.Activity(
                "takeaway-round",
                "Takeaway round",
                Optional.of(Kind.REFLECTION),
                "close",
                Duration.ZERO,
                length,
                Format.PLENARY,
                20));
    Agenda agenda =
        new Agenda(
            "A last round",
            "generate-ideas",
            Mode.REMOTE,
            6,
            length,
            Optional.empty(),
            List.of(new Agenda.PhaseTitle("close", "Close")),
            items,
            Duration.ZERO,
            List.of(),
            Figures.of(items, List.of(), length));
    Brief brief =
        Brief.builder("A last round", "generate-ideas", Mode.REMOTE, 6, Duration.ofMinutes(30))
            .build();
    return new Workshop(agenda, brief, BuiltIn.catalog(), Language.ENGLISH);
  }
}
