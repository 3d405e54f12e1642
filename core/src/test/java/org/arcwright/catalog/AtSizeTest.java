package org.arcwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.AtSize.StepAtSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An exercise as a facilitator runs it with so many people. */
class AtSizeTest {
  @Test
  void twelve_people_in_threes_are_four_groups() {
    AtSize sized = AtSize.of(exercise(3, 3, 12, Format.SMALL_GROUPS, Per.PERSON), 12);

    StepAtSize step = sized.steps().get(0);
    assertThat(step.groups()).contains(new Split(12, 4));
    assertThat(step.times()).isEqualTo(3);
    assertThat(step.minutes()).isEqualTo(minutes(3, 6, 9));
    assertThat(sized.minutes()).isEqualTo(minutes(3, 6, 9));
  }

  @ParameterizedTest
  @CsvSource({
    "PLENARY, SESSION, 1",
    "PLENARY, PERSON, 13",
    "PAIRS, PERSON, 2",
    "SMALL_GROUPS, PERSON, 5",
    "SMALL_GROUPS, GROUP, 3",
    "PLENARY, GROUP, 3",
    "SMALL_GROUPS, SESSION, 1"
  })
  void turns_are_taken_inside_the_format(Format format, Per per, int times) {
    StepAtSize step = AtSize.of(exercise(3, 5, 30, format, per), 13).steps().get(0);

    assertThat(step.times()).isEqualTo(times);
    assertThat(step.minutes()).isEqualTo(minutes(times, 2 * times, 3 * times));
  }

  @ParameterizedTest
  @CsvSource({"13, 3, 4, 1", "12, 3, 4, 0", "14, 3, 4, 2", "5, 1, 5, 0"})
  void groups_differ_by_one_at_the_most(int people, int groups, int smaller, int larger) {
    Split split = new Split(people, groups);

    assertThat(split.smaller()).isEqualTo(smaller);
    assertThat(split.larger()).isEqualTo(larger);
    assertThat((groups - larger) * smaller + larger * (smaller + 1)).isEqualTo(people);
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "3, 1", "7, 3", "8, 4", "1, 1"})
  void an_odd_person_joins_a_pair(int people, int pairs) {
    assertThat(Split.pairs(people)).isEqualTo(new Split(people, pairs));
  }

  @Test
  void who_is_not_served_is_told_the_nearest_number() {
    Exercise exercise = exercise(4, 5, 30, Format.SMALL_GROUPS, Per.SESSION);

    assertThat(exercise.serves(7)).isFalse();
    assertThat(exercise.nearest(7)).isEqualTo(8);
    assertThat(exercise.nearest(6)).isEqualTo(5);
    assertThat(exercise.nearest(200)).isEqualTo(30);
    assertThat(exercise.nearest(1)).isEqualTo(4);
    assertThatExceptionOfType(InvalidValueException.class).isThrownBy(() -> AtSize.of(exercise, 7));
  }

  @Test
  void an_exercise_that_nobody_can_run_is_refused() {
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> exercise(4, 5, 6, 7, Format.SMALL_GROUPS, Per.SESSION))
        .withMessageContaining("none of 6-7 people split into such groups");
    assertThatExceptionOfType(InvalidValueException.class)
        .isThrownBy(() -> exercise(3, 5, 3, 1000, Format.PLENARY, Per.PERSON))
        .withMessageContaining("with so many it takes more than a day");
  }

  private static Exercise exercise(int least, int most, int people, Format format, Per per) {
    return exercise(least, most, least, people, format, per);
  }

  /** One step of one to three minutes. */
  private static Exercise exercise(
      int least, int most, int fewest, int people, Format format, Per per) {
    return CatalogSamples.exercise(
        "one-step",
        new SizeRange(fewest, people),
        Optional.of(new SizeRange(least, most)),
        List.of(new Step("Talk.", Speaker.EACH, format, minutes(1, 2, 3), per, 1)),
        Set.of("arrival"));
  }

  private static Minutes minutes(int min, int typical, int max) {
    return new Minutes(
        Duration.ofMinutes(min), Duration.ofMinutes(typical), Duration.ofMinutes(max));
  }
}
