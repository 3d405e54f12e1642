package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.format.BriefFormat;
import org.arcwright.library.BuiltIn;
import org.arcwright.standin.StandInFinder;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Withstanding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Most example briefs have an agenda that goes on when a tool fails, and it keeps its word. */
class WithstandTest {
  @ParameterizedTest
  @ValueSource(strings = {"board", "breakouts", "chat"})
  void in_a_composed_agenda_each_exercise_that_leans_on_the_tool_has_a_stand_in(String tool) {
    Catalog catalog = BuiltIn.catalog();
    int asked = 0;
    int reached = 0;
    for (Path file : Repository.briefs()) {
      Brief brief = BriefFormat.read(file, catalog);
      if (brief.mode() == Mode.IN_PERSON) {
        continue;
      }
      Withstanding.Found found =
          Withstanding.compose(catalog, brief, Set.of(tool), Budget.USUAL, InstantSource.system());

      asked++;
      if (found.reached()) {
        Agenda agenda = ((Composed) found.composition()).agenda();
        StandIns standIns = StandInFinder.of(catalog).find(agenda, brief).onlyWithout(tool);
        assertThat(standIns.covered()).as("%s", file).isEqualTo(standIns.pairs());
        assertThat(Composer.of(catalog).check(agenda, brief).fits()).as("%s", file).isTrue();
        reached++;
      }
    }
    assertThat(2 * reached).isGreaterThan(asked);
  }
}
