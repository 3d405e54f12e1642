package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Collection;
import java.util.stream.IntStream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Step;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a page must hold so that a facilitator can run the exercise from it. */
class ExerciseRulesTest {
  /** Brysbaert (2019), A meta-analysis of reading rate: 183 words a minute aloud. */
  private static final int WORDS_A_MINUTE = 183;

  /** From so many on a group may be called large: common practice, no source. */
  private static final int LARGE = 30;

  @ParameterizedTest
  @MethodSource("exercises")
  void every_size_that_it_serves_splits_into_its_groups(Exercise exercise) {
    assertThat(sizes(exercise)).allMatch(exercise::serves);
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void it_takes_three_minutes_to_two_hours_for_every_size(Exercise exercise) {
    assertThat(sizes(exercise))
        .allSatisfy(
            people ->
                assertThat(exercise.minutes(people).typical())
                    .isBetween(Duration.ofMinutes(3), Duration.ofMinutes(120)));
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void its_opening_can_be_said_within_its_first_step(Exercise exercise) {
    int words = exercise.opening().split("\\s+").length;
    Step first = exercise.steps().get(0);

    assertThat(Duration.ofSeconds(60L * words / WORDS_A_MINUTE))
        .isLessThanOrEqualTo(first.minutes().typical());
  }

  /** It is read by those who take part, who are as few as the exercise serves, or as many. */
  @ParameterizedTest
  @MethodSource("exercises")
  void its_purpose_fits_the_smallest_group_that_it_serves(Exercise exercise) {
    if (exercise.people().min() < LARGE) {
      assertThat(exercise.purpose())
          .doesNotContainPattern("(?i)\\b(large|big|huge) groups?\\b|\\bhundred|\\bcrowd");
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void nobody_far_away_is_without_a_call(Exercise exercise) {
    for (Mode mode : new Mode[] {Mode.REMOTE, Mode.HYBRID}) {
      if (exercise.in(mode).fit() > 0) {
        assertThat(exercise.in(mode).tools()).contains("call");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void its_tools_are_usual_in_the_mode(Exercise exercise) {
    for (Mode mode : Mode.values()) {
      assertThat(exercise.in(mode).tools())
          .allMatch(tool -> BuiltIn.catalog().tools().get(tool).modes().contains(mode));
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void small_groups_far_apart_have_rooms_or_the_chat(Exercise exercise) {
    boolean apart =
        exercise.steps().stream()
            .map(Step::format)
            .anyMatch(format -> format == Format.PAIRS || format == Format.SMALL_GROUPS);

    if (apart && exercise.in(Mode.REMOTE).fit() > 0) {
      assertThat(exercise.in(Mode.REMOTE).tools()).containsAnyOf("breakouts", "chat");
    }
  }

  private static IntStream sizes(Exercise exercise) {
    return IntStream.rangeClosed(exercise.people().min(), exercise.people().max());
  }

  static Collection<Exercise> exercises() {
    return BuiltIn.catalog().exercises().values();
  }
}
