package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** Why an exercise is not in an agenda. */
class WhyNotTest {
  private static final Catalog CATALOG =
      Sample.catalog(
          SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build(),
          SampleExercise.of("crowd", Kind.DIVERGENT, 5, 5, 5, "idea-pool").people(30, 90).build(),
          SampleExercise.of("vigil", Kind.DIVERGENT, 80, 80, 80, "idea-pool").build());
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(5));

  private final Brief brief = brief(90).build();
  private final Agenda agenda = ((Composed) Composer.of(CATALOG).compose(brief, AMPLE)).agenda();

  @Test
  void it_is_in_already() {
    Activity first = agenda.activities().get(0);

    assertThat(whyNot(first.exercise())).isEqualTo(new WhyNot.IsIn(first));
  }

  @Test
  void it_could_be_in_then_the_best_agenda_has_it() {
    List<String> used = agenda.activities().stream().map(Activity::exercise).toList();
    List<String> unused =
        Sample.exercises().stream().map(Exercise::id).filter(id -> !used.contains(id)).toList();

    assertThat(unused).isNotEmpty();
    for (String id : unused) {
      assertThat(whyNot(id))
          .asInstanceOf(type(WhyNot.Possible.class))
          .satisfies(
              possible -> {
                assertThat(possible.with().proof().best()).isTrue();
                assertThat(possible.with().agenda().activities())
                    .anyMatch(activity -> activity.exercise().equals(id));
                assertThat(possible.with().agenda().figures().cost().total())
                    .isGreaterThanOrEqualTo(agenda.figures().cost().total());
              });
    }
  }

  @Test
  void the_brief_rules_it_out_by_one_of_its_keys_and_there_is_a_way_to_have_it() {
    ruledOut("deep", "people.openness", "let it get more personal: openness 3 instead of 1");
    ruledOut("crowd", "people", "do without \"The crowd\"");
    ruledOut("vigil", "rhythm.stretch", "do without \"The vigil\"");
  }

  private void ruledOut(String exercise, String field, String wayOut) {
    assertThat(whyNot(exercise))
        .asInstanceOf(type(WhyNot.RuledOut.class))
        .satisfies(
            ruled -> {
              assertThat(ruled.leftOut().field()).contains(field);
              assertThat(ruled.leftOut().exercise()).isEqualTo(exercise);
              assertThat(ruled.clash().waysOut())
                  .anyMatch(way -> way.loosenings().get(0).text().equals(wayOut));
            });
  }

  @Test
  void the_brief_leaves_it_out_by_name() {
    Brief without =
        brief(90).wishes(new Wishes(Set.of(), Set.of("dots"), List.of(), Set.of())).build();
    Agenda other = ((Composed) Composer.of(CATALOG).compose(without, AMPLE)).agenda();

    assertThat(Explainer.of(CATALOG).whyNot(without, other, "dots", AMPLE))
        .asInstanceOf(type(WhyNot.RuledOut.class))
        .satisfies(ruled -> assertThat(ruled.leftOut().field()).contains("wishes.leave-out"));
  }

  @Test
  void the_brief_allows_it_but_nothing_fits_with_it() {
    Brief tight = brief(50).build();
    Agenda shortest = ((Composed) Composer.of(CATALOG).compose(tight, AMPLE)).agenda();

    assertThat(Explainer.of(CATALOG).whyNot(tight, shortest, "carousel", AMPLE))
        .asInstanceOf(type(WhyNot.Impossible.class))
        .satisfies(
            impossible ->
                assertThat(impossible.clash().conflicts().get(0).wishes())
                    .extracting(Clash.Asked::wish)
                    .contains(new Wish.Include("carousel")));
  }

  @Test
  void who_has_no_budget_learns_nothing() {
    assertThat(
            Explainer.of(CATALOG)
                .whyNot(brief, agenda, "deep", new Budget(1, Duration.ofMinutes(1)), () -> true))
        .isEqualTo(new WhyNot.Unknown());
  }

  private WhyNot whyNot(String exercise) {
    return Explainer.of(CATALOG).whyNot(brief, agenda, exercise, AMPLE);
  }
}
