package org.arcwright.standin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;

class WithstandingTest {
  private static final int CASES = 150;
  private static final Set<String> BREAKOUTS = Set.of("breakouts");

  private int freely;
  private int dearly;
  private int notAtAll;

  @Test
  void every_exercise_has_a_stand_in_or_no_agenda_does_without_the_tool() {
    Random random = new Random(7);
    for (int i = 0; i < CASES; i++) {
      Catalog catalog = Sample.only(StandInOracleTest.exercises(random));
      Brief brief = Sample.brief(90 + 15 * random.nextInt(4)).build();
      Composition plain = Composer.of(catalog).compose(brief, Budget.USUAL);
      Withstanding.Found found = withstand(catalog, brief);
      if (plain instanceof Composed best) {
        look(found, best, brief, catalog);
      } else {
        assertThat(found.composition()).isInstanceOf(plain.getClass());
      }
    }
    assertThat(List.of(freely, dearly, notAtAll)).allMatch(count -> count > 5);
  }

  private void look(Withstanding.Found found, Composed best, Brief brief, Catalog catalog) {
    Composed composed = (Composed) found.composition();
    StandIns standIns = StandInFinder.of(catalog).find(composed.agenda(), brief);
    int stops = standIns.onlyWithout("breakouts").pairs();

    assertThat(found.verdict().complete()).isTrue();
    assertThat(found.verdict().stops()).isEqualTo(stops);
    assertThat(Composer.of(catalog).check(composed.agenda(), brief).fits()).isTrue();
    assertThat(found.verdict().dearer())
        .isEqualTo(composed.proof().cost() - best.proof().cost())
        .isNotNegative();
    if (found.reached()) {
      assertThat(standIns.onlyWithout("breakouts").covered()).isEqualTo(stops);
      freely += found.verdict().leftOut() == 0 ? 1 : 0;
      dearly += found.verdict().leftOut() > 0 ? 1 : 0;
    } else {
      assertThat(found.verdict().bare()).isNotEmpty();
      assertThat(found.verdict().reasons())
          .isNotEmpty()
          .noneMatch(reason -> reason.contains("the brief leaves out"));
      assertThat(Composer.of(catalog).composeWithout(leaning(catalog, brief), brief, Budget.USUAL))
          .isInstanceOf(NothingFits.class);
      notAtAll++;
    }
  }

  /** The exercises that cannot be had without breakout rooms. */
  private static Map<String, String> leaning(Catalog catalog, Brief brief) {
    return catalog.exercises().values().stream()
        .filter(exercise -> exercise.in(brief.mode()).tools().contains("breakouts"))
        .collect(Collectors.toMap(Exercise::id, exercise -> "leans on breakout rooms"));
  }

  @Test
  void what_is_wished_for_stays_in_and_is_named_when_nothing_stands_in() {
    Random random = new Random(11);
    int kept = 0;
    while (kept < 3) {
      Catalog catalog = Sample.only(StandInOracleTest.exercises(random));
      Brief brief = Sample.brief(120).build();
      if (Composer.of(catalog).compose(brief, Budget.USUAL) instanceof Composed best) {
        StandIns standIns = StandInFinder.of(catalog).find(best.agenda(), brief);
        for (ToolLoss loss : standIns.onlyWithout("breakouts").tools()) {
          for (Swap swap : loss.swaps()) {
            if (swap.standIn().isEmpty()) {
              Activity bare = (Activity) best.agenda().items().get(swap.place());
              Wishes wish = new Wishes(Set.of(bare.exercise()), Set.of(), List.of(), Set.of());
              Withstanding.Found found = withstand(catalog, brief.toBuilder().wishes(wish).build());
              assertThat(((Composed) found.composition()).agenda().activities())
                  .extracting(Activity::exercise)
                  .contains(bare.exercise());
              kept++;
            }
          }
        }
      }
    }
  }

  @Test
  void refuses_a_tool_that_there_is_not() {
    assertThatThrownBy(
            () ->
                Withstanding.compose(
                    Sample.catalog(),
                    Sample.brief(120).build(),
                    Set.of("bord"),
                    Budget.USUAL,
                    InstantSource.system()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("bord");
  }

  private static Withstanding.Found withstand(Catalog catalog, Brief brief) {
    return Withstanding.compose(catalog, brief, BREAKOUTS, Budget.USUAL, InstantSource.system());
  }
}
