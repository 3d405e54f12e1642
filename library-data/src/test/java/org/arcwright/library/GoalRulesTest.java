package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every arc, and that the exercises can fill it. */
class GoalRulesTest {
  /** Common practice of the trade, no source. */
  @ParameterizedTest
  @MethodSource("goals")
  void a_workshop_opens_with_an_icebreaker_and_closes_with_reflection(Goal goal) {
    Phase first = goal.arc().get(0);
    Phase last = goal.arc().get(goal.arc().size() - 1);

    assertThat(first.kinds()).containsExactly(Kind.ICEBREAKER);
    assertThat(last.kinds()).containsExactly(Kind.REFLECTION);
    assertThat(last.yields()).contains("takeaways");
    assertThat(goal.arc()).hasSizeBetween(4, 6);
  }

  @ParameterizedTest
  @MethodSource("goals")
  void the_shares_that_are_wished_make_a_whole(Goal goal) {
    assertThat(goal.arc().stream().mapToInt(phase -> phase.share().target()).sum()).isEqualTo(100);
    assertThat(goal.arc().stream().mapToInt(phase -> phase.share().min()).sum())
        .isLessThanOrEqualTo(60);
    assertThat(goal.arc().stream().mapToInt(phase -> phase.share().max()).sum())
        .isGreaterThanOrEqualTo(150);
  }

  @ParameterizedTest
  @MethodSource("goals")
  void what_a_phase_must_leave_several_exercises_of_its_kinds_leave(Goal goal) {
    Set<String> there = new HashSet<>(goal.given());
    for (Phase phase : goal.arc()) {
      for (String product : phase.yields()) {
        assertThat(
                BuiltIn.catalog().exercises().values().stream()
                    .filter(exercise -> phase.kinds().contains(exercise.kind()))
                    .filter(exercise -> exercise.yields().contains(product)))
            .hasSizeGreaterThanOrEqualTo(2);
      }
      there.addAll(phase.yields());
    }
    assertThat(there).containsAll(goal.yields());
  }

  @ParameterizedTest
  @MethodSource("goals")
  void an_hour_and_a_half_and_a_whole_day_can_be_filled(Goal goal) {
    for (Mode mode : List.of(Mode.REMOTE, Mode.IN_PERSON)) {
      assertThat(compose(goal, mode, Duration.ofMinutes(90)))
          .isInstanceOf(Composition.Composed.class);
      assertThat(compose(goal, mode, Duration.ofHours(8)))
          .isInstanceOfSatisfying(
              Composition.Composed.class,
              day -> assertThat(day.agenda().end()).isGreaterThan(Duration.ofHours(6)));
    }
  }

  private static Composition compose(Goal goal, Mode mode, Duration cap) {
    BriefBuilder brief = Brief.builder(goal.title(), goal.id(), mode, 12, cap);
    if (cap.toHours() > 5) {
      brief.meal(new Meal(Duration.ofHours(3), Duration.ofHours(4), Duration.ofMinutes(45)));
    }
    Budget enough = new Budget(5_000_000, Duration.ofMinutes(1));
    return Composer.of(BuiltIn.catalog()).compose(brief.build(), enough);
  }

  static Collection<Goal> goals() {
    return BuiltIn.catalog().goals().values();
  }
}
