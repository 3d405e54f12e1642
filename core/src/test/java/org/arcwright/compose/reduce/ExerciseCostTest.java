package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.instance.Instance.Candidate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a person reads of an exercise's cost; how much each cause weighs, ExchangeRatesTest says.
 */
class ExerciseCostTest {
  private static final String EXPLAINED = "each exercise has to be explained";

  @Test
  void an_exercise_at_its_best_has_only_to_be_explained() {
    assertThat(causes(brief(90), sample())).containsExactly(EXPLAINED);
  }

  @Test
  void how_well_it_works_in_this_mode() {
    assertThat(causes(brief(90), sample().in(Mode.REMOTE, 2)))
        .containsExactly(EXPLAINED, "good remotely, but better elsewhere");
    assertThat(causes(Sample.brief(Mode.IN_PERSON, 8, 90), sample().in(Mode.IN_PERSON, 1)))
        .containsExactly(EXPLAINED, "possible in person, but with effort");
  }

  @Test
  void whether_it_leads_to_the_goal() {
    assertThat(causes(brief(90), yielding("introductions")))
        .containsExactly(EXPLAINED, "beside the point of the goal");
    assertThat(causes(brief(90), yielding("feedback")))
        .containsExactly(EXPLAINED, "of some use, but nothing in the goal asks for it");
  }

  @Test
  void whether_the_group_knows_it() {
    Wishes wishes = new Wishes(Set.of(), Set.of(), List.of(), Set.of("sample"));

    assertThat(causes(brief(90).wishes(wishes), sample()))
        .containsExactly(EXPLAINED, "used last time");
  }

  @Test
  void whether_people_know_each_other() {
    assertThat(causes(reduce(brief(90).acquaintance(Acquaintance.STRANGERS)), "race"))
        .containsExactly(EXPLAINED, "a warm-up that leaves strangers strangers");
    assertThat(causes(reduce(brief(90).acquaintance(Acquaintance.COLLEAGUES)), "names"))
        .containsExactly(EXPLAINED, "introductions among people who know each other");
  }

  @Test
  void whether_its_small_groups_can_be_looked_after() {
    assertThat(causes(Sample.brief(Mode.REMOTE, 31, 90), sample().groups(3, 5)))
        .containsExactly(EXPLAINED, "more small groups than can be looked after");
  }

  @Test
  void own_items_and_exercises_that_are_left_out_have_none() {
    Wishes wishes = new Wishes(Set.of(), Set.of("dots"), List.of(), Set.of());

    assertThat(reduce(brief(90).wishes(wishes)).costParts().apply("dots")).isEmpty();
    assertThat(reduce(brief(90)).costParts().apply("talk")).isEmpty();
  }

  /** The parts explain the cost that was weighed, and nothing else. */
  @ParameterizedTest
  @EnumSource(Acquaintance.class)
  void the_parts_add_up_to_what_was_weighed(Acquaintance acquaintance) {
    Wishes wishes = new Wishes(Set.of(), Set.of(), List.of(), Set.of("sample", "dots"));
    Exercise worst =
        SampleExercise.of("sample", Kind.ICEBREAKER, 5, 5, 10, "feedback")
            .in(Mode.REMOTE, 1)
            .groups(3, 4)
            .build();

    Reduction reduction =
        reduce(Sample.brief(Mode.REMOTE, 80, 90).acquaintance(acquaintance).wishes(wishes), worst);

    for (Candidate candidate : reduction.instance().candidates()) {
      List<CostPart> parts = reduction.costParts().apply(candidate.id());
      assertThat(parts.stream().mapToInt(CostPart::points).sum())
          .as(candidate.id())
          .isEqualTo(candidate.cost());
      assertThat(parts).allSatisfy(part -> assertThat(part.points()).isPositive());
    }
  }

  private static List<String> causes(BriefBuilder brief, SampleExercise sample) {
    return causes(reduce(brief, sample.build()), "sample");
  }

  private static List<String> causes(Reduction reduction, String id) {
    return reduction.costParts().apply(id).stream().map(CostPart::why).toList();
  }

  private static SampleExercise sample() {
    return yielding("idea-pool");
  }

  private static SampleExercise yielding(String product) {
    return SampleExercise.of("sample", Kind.DIVERGENT, 10, 15, 20, product);
  }
}
