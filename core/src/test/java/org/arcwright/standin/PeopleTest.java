package org.arcwright.standin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** Eight people are planned; fewer come, or somebody who matters does not. */
class PeopleTest {
  private static final Catalog CATALOG =
      Sample.catalog(
          SampleExercise.of("crowd", Kind.DIVERGENT, 20, 25, 30, "idea-pool")
              .people(7, 30)
              .in(Mode.REMOTE, 3, "call", "breakouts")
              .build());
  private static final Brief BRIEF =
      Sample.brief(90).wishes(new Wishes(Set.of("crowd"), Set.of(), List.of(), Set.of())).build();
  private static final Agenda AGENDA =
      ((Composed) Composer.of(CATALOG).compose(BRIEF, Budget.USUAL)).agenda();
  private static final StandIns FOUND = StandInFinder.of(CATALOG).find(AGENDA, BRIEF);

  @Test
  void what_needs_a_crowd_says_from_which_head_count_on_it_stops_and_what_to_do() {
    Turnout crowd = turnout("crowd");

    assertThat(crowd.impossible()).containsExactly(6, 5, 4);
    assertThat(crowd.usual()).isEmpty();
    assertThat(crowd.standIn().map(StandIn::exercise).orElseThrow())
        .isIn("silent-list", "carousel");
    assertThat(FOUND.fewer())
        .filteredOn(turnout -> turnout.place() != crowd.place())
        .allMatch(Turnout::always)
        .allMatch(turnout -> turnout.usual().isPresent());
  }

  @Test
  void what_leans_on_breakout_rooms_is_not_led_alone() {
    assertThat(FOUND.alone()).extracting(PeopleTest::id).containsExactly("crowd");
  }

  @Test
  void the_decisions_are_named_for_the_day_without_a_sponsor() {
    assertThat(FOUND.decisions())
        .isNotEmpty()
        .allMatch(place -> activity(place).kind().equals(Optional.of(Kind.DECISION)));
  }

  private static Turnout turnout(String exercise) {
    return FOUND.fewer().stream()
        .filter(turnout -> activity(turnout.place()).exercise().equals(exercise))
        .findFirst()
        .orElseThrow();
  }

  private static String id(Swap swap) {
    return activity(swap.place()).exercise();
  }

  private static Activity activity(int place) {
    return (Activity) AGENDA.items().get(place);
  }
}
