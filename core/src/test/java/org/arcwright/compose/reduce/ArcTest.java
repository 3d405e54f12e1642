package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.phase;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Rhythm;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArcTest {
  private static final Rhythm LONG_STRETCHES =
      new Rhythm(Sample.minutes(30), Sample.minutes(120), Sample.minutes(10));

  /** 180 minutes remote leave 139 for exercises. */
  @Test
  void a_phase_has_its_share_of_the_working_time_rounded_outward_to_the_grid() {
    Reduction reduction = reduce(brief(180));

    assertThat(phase(reduction, "open").minutes()).isEqualTo(new Bounds(10, 30)); // 11.1, 25.02
    assertThat(phase(reduction, "open").target()).isEqualTo(17); // 16.7
    assertThat(phase(reduction, "narrow").minutes()).isEqualTo(new Bounds(20, 50)); // 20.9, 48.7
    assertThat(phase(reduction, "narrow").target()).isEqualTo(35); // 34.75
    assertThat(phase(reduction, "explore").count()).isEqualTo(new Bounds(1, 3));
    assertThat(phase(reduction, "explore").yields()).containsExactly("idea-pool");
  }

  /** A hundred minutes, no breaks, no buffer: a share in per cent is its minutes. */
  @Test
  void a_share_that_meets_the_grid_is_not_rounded() {
    Reduction reduction = reduce(brief(100).bufferPercent(0).rhythm(LONG_STRETCHES));

    assertThat(phase(reduction, "explore").minutes()).isEqualTo(new Bounds(25, 45));
    assertThat(phase(reduction, "narrow").minutes()).isEqualTo(new Bounds(15, 35));
    assertThat(phase(reduction, "explore").target()).isEqualTo(35);
  }

  /** 60 minutes leave 52; a tenth of it would be 5, but no reflection takes under 20. */
  @Test
  void a_phase_may_always_be_as_long_as_its_shortest_exercise() {
    Exercise slow = SampleExercise.of("slow", Kind.REFLECTION, 20, 20, 20, "takeaways").build();
    Reduction reduction =
        Reducer.reduce(
            brief(60).build(), Sample.only(withoutKind(Kind.REFLECTION, slow)), () -> false);

    assertThat(phase(reduction, "close").minutes().max()).isEqualTo(20);
  }

  @Test
  void a_phase_may_always_be_as_long_as_the_exercises_that_leave_its_work_products() {
    Exercise quick = SampleExercise.of("quick", Kind.REFLECTION, 5, 5, 5, "feedback").build();
    Exercise slow = SampleExercise.of("slow", Kind.REFLECTION, 20, 20, 20, "takeaways").build();
    Reduction reduction =
        Reducer.reduce(
            brief(60).build(), Sample.only(withoutKind(Kind.REFLECTION, quick, slow)), () -> false);

    assertThat(phase(reduction, "close").minutes().max()).isEqualTo(20);
  }

  /** 480 minutes leave 365; 6 % of it are 21 minutes, but one word takes 5 at the most. */
  @Test
  void a_phase_need_never_be_longer_than_its_exercises_can_be() {
    Exercise word = SampleExercise.of("word", Kind.REFLECTION, 4, 5, 8, "takeaways").build();
    Reduction reduction =
        Reducer.reduce(
            brief(480).build(), Sample.only(withoutKind(Kind.REFLECTION, word)), () -> false);

    assertThat(phase(reduction, "close").minutes().min()).isEqualTo(5);
  }

  /**
   * If one phase needs so much that the least shares of the others go over the time, they yield.
   */
  @Test
  void shares_give_way_to_the_shortest_exercises_when_time_is_tight() {
    Exercise slow = SampleExercise.of("slow", Kind.DECISION, 30, 30, 30, "decision").build();
    Reduction reduction =
        Reducer.reduce(
            brief(80).build(), Sample.only(withoutKind(Kind.DECISION, slow)), () -> false);

    assertThat(phase(reduction, "explore").minutes().min()).isEqualTo(10);
    assertThat(solve(reduction.instance()).status()).isEqualTo(Solution.Status.OPTIMAL);
  }

  /** Its exercises take ten minutes at the least and 65 together at the most. */
  @Test
  void shares_that_just_fill_the_time_stand() {
    assertThat(halves(50)).extracting(phase -> phase.minutes().min()).containsExactly(50, 50);
    assertThat(halves(55)).extracting(phase -> phase.minutes().min()).containsExactly(10, 10);
  }

  /** Two phases that each ask for so many per cent of a hundred minutes. */
  private static List<Instance.Phase> halves(int percent) {
    Phase.Share share = new Phase.Share(percent, percent, percent);
    Goal goal =
        new Goal(
            "halves",
            "Halves",
            "To share the time.",
            Set.of(),
            Set.of(),
            List.of(
                new Phase("one", "One", Set.of(Kind.DIVERGENT), 1, 9, share, Set.of()),
                new Phase("other", "Other", Set.of(Kind.DIVERGENT), 1, 9, share, Set.of())));
    Catalog catalog =
        Catalog.of(Sample.products(), Sample.tools(), Sample.exercises(), List.of(goal));
    Brief brief =
        Brief.builder("Halves", "halves", Mode.REMOTE, 8, Sample.minutes(100))
            .bufferPercent(0)
            .rhythm(LONG_STRETCHES)
            .build();
    return Reducer.reduce(brief, catalog, () -> false).instance().phases();
  }

  @ParameterizedTest
  @ValueSource(ints = {50, 60, 75, 90, 120, 150, 180, 240})
  void five_phases_fit_into_short_and_long_caps(int cap) {
    Instance instance = reduce(brief(cap)).instance();
    Solution solution = solve(instance);

    assertThat(solution.status()).isEqualTo(Solution.Status.OPTIMAL);
    assertThat(Checker.check(instance, solution.items()).findings()).isEmpty();
    assertThat(solution.cost()).isLessThan(10_000);
  }

  /** The sample has too few exercises for a day, so it ends early, but it does not fail. */
  @ParameterizedTest
  @EnumSource(Mode.class)
  void a_whole_day_with_few_exercises_ends_early(Mode mode) {
    Solution solution = solve(reduce(Sample.brief(mode, 8, 480)).instance());

    assertThat(solution.status()).isEqualTo(Solution.Status.OPTIMAL);
    assertThat(solution.cost()).isLessThan(10_000);
  }

  private static Solution solve(Instance instance) {
    return Search.solve(instance, Limit.NONE);
  }

  private static List<Exercise> withoutKind(Kind kind, Exercise... instead) {
    List<Exercise> exercises =
        new ArrayList<>(
            Sample.exercises().stream().filter(exercise -> exercise.kind() != kind).toList());
    exercises.addAll(List.of(instead));
    return exercises;
  }
}
