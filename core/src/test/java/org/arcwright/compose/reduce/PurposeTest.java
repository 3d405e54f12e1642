package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.junit.jupiter.api.Test;

/** Which exercises lead to choosing a venue, and which are beside the point. */
class PurposeTest {
  private static final Exercise IDEAS = divergent("ideas", "idea-pool", "items");
  private static final Exercise RISKS = divergent("risks", "risks", "items");
  private static final Exercise PROPOSALS = convergent("proposals", "options");
  private static final Exercise CAUSES = convergent("causes", "causes");
  private static final Exercise GROUPING = convergent("grouping", "themes");
  private static final Exercise REPHRASING = convergent("rephrasing", "question");
  private static final Exercise SORTING = convergent("sorting", "shortlist");
  private static final Exercise MATRIX =
      SampleExercise.of("matrix", Kind.DECISION, 5, 5, 5, "decision").needs("options").build();
  private static final Exercise WISHES =
      SampleExercise.of("wishes", Kind.DIVERGENT, 5, 5, 5, "idea-pool").needs("question").build();

  @Test
  void what_a_phase_of_their_kind_must_leave_is_to_the_point() {
    assertThat(serving(IDEAS, SORTING, MATRIX)).containsExactly(IDEAS, SORTING, MATRIX);
  }

  @Test
  void what_only_another_kind_s_phase_must_leave_is_not() {
    assertThat(serving(convergent("odd", "idea-pool"))).isEmpty();
  }

  @Test
  void what_these_need_is_to_the_point() {
    assertThat(serving(PROPOSALS)).isEmpty();
    assertThat(serving(PROPOSALS, MATRIX)).containsExactly(PROPOSALS, MATRIX);
  }

  @Test
  void what_only_exercises_of_the_same_kind_need_is_not() {
    Exercise reports =
        SampleExercise.of("reports", Kind.DECISION, 5, 5, 5, "decision").needs("actions").build();
    Exercise actions = SampleExercise.of("actions", Kind.DECISION, 5, 5, 5, "actions").build();

    assertThat(serving(reports, actions)).containsExactly(reports);
  }

  @Test
  void what_goes_on_from_the_choice_in_its_phase_is_to_the_point() {
    Exercise plan =
        SampleExercise.of("plan", Kind.DECISION, 5, 5, 5, "actions").needs("decision").build();

    assertThat(serving(plan)).containsExactly(plan);
  }

  @Test
  void groups_of_ideas_and_criteria_are_of_some_use_where_something_is_chosen() {
    assertThat(price(GROUPING)).isEqualTo(ExchangeRates.NOT_ASKED_FOR);
    assertThat(price(convergent("measures", "criteria"))).isEqualTo(ExchangeRates.NOT_ASKED_FOR);
    assertThat(price(CAUSES)).isEqualTo(ExchangeRates.BESIDE_THE_POINT);
  }

  @Test
  void criteria_are_of_no_use_where_nothing_is_chosen() {
    Exercise measures = SampleExercise.of("measures", Kind.DIVERGENT, 5, 5, 5, "criteria").build();
    Goal gathering = ShortArc.catalog().goal(ShortArc.GOAL).orElseThrow();

    assertThat(price(gathering, measures)).isEqualTo(ExchangeRates.BESIDE_THE_POINT);
    assertThat(price(gathering, divergent("clusters", "themes")))
        .isEqualTo(ExchangeRates.NOT_ASKED_FOR);
  }

  @Test
  void another_matter_is_beside_the_point_even_if_it_leaves_a_list_too() {
    Exercise dots =
        SampleExercise.of("dots", Kind.CONVERGENT, 5, 5, 5, "shortlist").needs("items").build();

    assertThat(serving(RISKS, CAUSES, dots)).containsExactly(dots);
  }

  @Test
  void what_exists_beforehand_need_not_be_made_again() {
    assertThat(serving(REPHRASING, WISHES)).containsExactly(WISHES);

    Allowed ideas = Sample.allowed(IDEAS);
    Purpose purpose = new Purpose(Sample.goal(), Set.of("idea-pool"), List.of(ideas));
    assertThat(purpose.price(ideas)).isEqualTo(ExchangeRates.BESIDE_THE_POINT);
  }

  private static List<Exercise> serving(Exercise... exercises) {
    List<Allowed> allowed = Stream.of(exercises).map(Sample::allowed).toList();
    Purpose purpose = new Purpose(Sample.goal(), Set.of("question"), allowed);
    return allowed.stream()
        .filter(exercise -> purpose.price(exercise) == 0)
        .map(Allowed::exercise)
        .toList();
  }

  private static int price(Exercise exercise) {
    return price(Sample.goal(), exercise);
  }

  private static int price(Goal goal, Exercise exercise) {
    Allowed allowed = Sample.allowed(exercise);
    return new Purpose(goal, Set.of("question"), List.of(allowed)).price(allowed);
  }

  private static Exercise divergent(String id, String... yields) {
    return SampleExercise.of(id, Kind.DIVERGENT, 5, 5, 5, yields).build();
  }

  private static Exercise convergent(String id, String... yields) {
    return SampleExercise.of(id, Kind.CONVERGENT, 5, 5, 5, yields).build();
  }
}
