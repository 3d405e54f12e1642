package org.arcwright.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.arcwright.forecast.Forecaster;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;
import org.junit.jupiter.api.Test;

/** Logs are simulated here, from fixed seeds, so that the truth is known. */
class LearnerTest {
  private static final OffsetDateTime NINE = OffsetDateTime.parse("2027-03-02T09:00+01:00");
  private static final Duration PLANNED = Duration.ofMinutes(20);

  private static final Exercise SORTING =
      SampleExercise.of("sorting", Kind.CONVERGENT, 10, 20, 30, "shortlist").build();
  private static final Catalog CATALOG = Sample.only(List.of(SORTING));

  @Test
  void fewer_than_three_logs_teach_nothing_however_far_they_lie() {
    List<Lesson> lessons =
        Learner.learn(CATALOG, List.of(day("sorting", 60), day("sorting", 60))).lessons();

    assertThat(lessons).containsExactly(new Lesson("sorting", 2, 8, 1, 1, 1, PLANNED, PLANNED));
    assertThat(lessons.get(0).learnt()).isFalse();
  }

  @Test
  void a_single_odd_day_does_not_matter_how_odd_it_is() {
    double odd = factor(List.of(20, 21, 19, 20, 60));
    double odder = factor(List.of(20, 21, 19, 20, 600));

    assertThat(odd).isCloseTo(1, within(0.02)).isEqualTo(odder);
  }

  @Test
  void the_more_days_agree_the_less_the_catalog_counts() {
    double three = factor(List.of(30, 31, 29));
    double nine = factor(List.of(30, 31, 29, 30, 31, 29, 30, 31, 29));

    assertThat(three).isBetween(1.05, 1.49);
    assertThat(nine).isGreaterThan(three).isLessThan(1.5);
  }

  @Test
  void breaks_and_what_never_ended_and_what_nobody_knows_are_passed_over() {
    Progress day = day("sorting", 25);
    Progress more =
        day.with(new LogEntry.Started(NINE.plusMinutes(90), "break", Optional.of(PLANNED)))
            .with(new LogEntry.Ended(NINE.plusMinutes(99), "break"))
            .with(new LogEntry.Started(NINE.plusMinutes(99), "surprise", Optional.of(PLANNED)))
            .with(new LogEntry.Ended(NINE.plusMinutes(120), "surprise"))
            .with(new LogEntry.Started(NINE.plusMinutes(120), "sorting", Optional.of(PLANNED)));

    assertThat(Observation.of(day, CATALOG)).hasSize(1);
    assertThat(Observation.of(more, CATALOG)).isEmpty();
  }

  @Test
  void what_was_taken_up_again_counts_once_with_all_its_time() {
    Progress twice =
        day("sorting", 15)
            .with(new LogEntry.Started(NINE.plusMinutes(40), "sorting", Optional.empty()))
            .with(new LogEntry.Ended(NINE.plusMinutes(50), "sorting"));

    assertThat(Observation.of(twice, CATALOG))
        .extracting(Observation::took)
        .containsExactly(Duration.ofMinutes(25));
  }

  @Test
  void an_exercise_at_another_pace_takes_so_many_times_as_long() {
    Exercise slower = Pace.at(SORTING, 1.25);

    assertThat(slower.minutes(8).typical()).isEqualTo(Duration.ofMinutes(25));
    assertThat(slower.title()).isEqualTo(SORTING.title());
    assertThat(Forecaster.expected(slower, 8, Duration.ofMinutes(25)).toSeconds())
        .isEqualTo(1250 * Forecaster.expected(SORTING, 8, PLANNED).toSeconds() / 1000);
  }

  /**
   * Thirty exercises that really take from half to twice what the catalog says, days that scatter
   * around that, and one run in twenty that goes wholly astray.
   */
  @Test
  void logs_held_out_are_predicted_better_than_by_the_catalog_and_the_truth_is_found() {
    Random random = new Random(635);
    List<Exercise> exercises = new ArrayList<>();
    Map<String, Double> truth = new HashMap<>();
    for (int i = 0; i < 30; i++) {
      int typical = 10 + random.nextInt(30);
      exercises.add(
          SampleExercise.of(
                  "e-" + i, Kind.DIVERGENT, 0.7 * typical, typical, 1.5 * typical, "idea-pool")
              .build());
      truth.put("e-" + i, Math.exp(0.25 * random.nextGaussian()));
    }
    Catalog catalog = Sample.only(exercises);
    List<Progress> logs = new ArrayList<>();
    for (int day = 0; day < 24; day++) {
      logs.add(simulated(exercises, truth, random));
    }

    Lessons lessons = Learner.learn(catalog, logs);
    Score score = lessons.score().orElseThrow();
    double before = 0;
    double after = 0;
    int within = 0;
    List<Lesson> learnt = lessons.lessons().stream().filter(Lesson::learnt).toList();
    for (Lesson lesson : learnt) {
      double real = truth.getOrDefault(lesson.exercise(), 1.0);
      before += Math.abs(Math.log(real));
      after += Math.abs(Math.log(real / lesson.factor()));
      within += lesson.low() <= real && real <= lesson.high() ? 1 : 0;
    }

    assertThat(lessons.simulated()).isEqualTo(24);
    assertThat(score.predictions()).isEqualTo(24 * 6);
    assertThat(score.after()).isLessThan(0.95 * score.before());
    assertThat(learnt).hasSizeGreaterThan(20);
    assertThat(after).isLessThan(0.65 * before);
    assertThat(within / (double) learnt.size()).isBetween(0.6, 0.97);
  }

  private static Progress simulated(
      List<Exercise> exercises, Map<String, Double> truth, Random random) {
    List<Exercise> some = new ArrayList<>(exercises);
    Collections.shuffle(some, random);
    Progress log = Progress.of(new Workshop("Simulated", Mode.REMOTE, 8, Optional.empty(), true));
    OffsetDateTime now = NINE;
    for (Exercise exercise : some.subList(0, 6)) {
      Duration planned = exercise.minutes(8).typical();
      double astray = random.nextInt(20) == 0 ? 3 : 1;
      double took =
          Forecaster.expected(exercise, 8, planned).toSeconds()
              * truth.getOrDefault(exercise.id(), 1.0)
              * Math.exp(0.15 * random.nextGaussian())
              * astray;
      log = log.with(new LogEntry.Started(now, exercise.id(), Optional.of(planned)));
      now = now.plusSeconds(Math.round(took));
      log = log.with(new LogEntry.Ended(now, exercise.id()));
    }
    return log;
  }

  private static double factor(List<Integer> minutes) {
    return Learner.learn(CATALOG, minutes.stream().map(m -> day("sorting", m)).toList())
        .lessons()
        .get(0)
        .factor();
  }

  private static Progress day(String exercise, int minutes) {
    return Progress.of(new Workshop("A day", Mode.REMOTE, 8, Optional.empty()))
        .with(new LogEntry.Started(NINE, exercise, Optional.of(PLANNED)))
        .with(new LogEntry.Ended(NINE.plusMinutes(minutes), exercise));
  }
}
