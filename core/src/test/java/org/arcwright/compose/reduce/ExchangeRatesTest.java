package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.candidate;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.instance.Instance;
import org.junit.jupiter.api.Test;

/**
 * What is as bad as what, as the table of {@link ExchangeRates} says it. Common practice, no
 * source: the figures are ours, and these tests hold the sentences true.
 */
class ExchangeRatesTest {
  private static final int ONE_LEVEL = 10;

  @Test
  void ten_minutes_one_level_off_the_curve_cost_a_hundred_points() {
    assertThat(levelOff(10)).isEqualTo(100);
  }

  @Test
  void two_plenaries_in_a_row_are_as_bad_as_a_quarter_of_an_hour_one_level_off() {
    assertThat(weights().monotony()).isEqualTo(levelOff(15));
    assertThat(weights().monotonyAcrossBreak()).isEqualTo(levelOff(5));
  }

  @Test
  void one_more_exercise_is_as_bad_as_five_minutes_one_level_off() {
    assertThat(candidate(reduce(brief(90)), "dots").cost()).isEqualTo(levelOff(5));
  }

  @Test
  void an_exercise_beside_the_point_is_as_bad_as_an_hour_one_level_off() {
    SampleExercise opinions =
        SampleExercise.of("sample", Kind.DIVERGENT, 10, 15, 20, "introductions");

    assertThat(extra(brief(90), opinions)).isEqualTo(levelOff(60));
  }

  @Test
  void suitability_2_instead_of_3_is_as_bad_as_ten_minutes_one_level_off() {
    assertThat(extra(brief(90), sample().in(Mode.REMOTE, 3))).isZero();
    assertThat(extra(brief(90), sample().in(Mode.REMOTE, 2))).isEqualTo(levelOff(10));
    assertThat(extra(brief(90), sample().in(Mode.REMOTE, 1))).isEqualTo(levelOff(40));
  }

  @Test
  void suitability_counts_in_the_brief_s_own_mode() {
    SampleExercise sample = sample().in(Mode.REMOTE, 1).in(Mode.IN_PERSON, 2);

    assertThat(extra(Sample.brief(Mode.IN_PERSON, 8, 90), sample)).isEqualTo(levelOff(10));
  }

  @Test
  void an_exercise_used_last_time_is_as_bad_as_fifty_minutes_one_level_off() {
    Wishes wishes = new Wishes(Set.of(), Set.of(), List.of(), Set.of("sample"));

    assertThat(extra(brief(90).wishes(wishes), sample())).isEqualTo(levelOff(50));
  }

  @Test
  void five_minutes_squeezed_are_as_bad_as_ten_minutes_one_level_off() {
    Lengths lengths = Lengths.of(sample().build().minutes(8), 5, 60);

    assertThat(lengths.minutes()).containsExactly(10, 15, 20);
    assertThat(lengths.costs()).containsExactly(levelOff(10), 0, levelOff(5));
  }

  @Test
  void five_minutes_left_over_are_as_bad_as_five_minutes_one_level_off() {
    assertThat(5 * weights().idle()).isEqualTo(levelOff(5));
  }

  @Test
  void a_break_is_as_bad_as_its_minutes_left_over() {
    assertThat(weights().pause()).isEqualTo(10 * weights().idle());
    assertThat(reduce(Sample.brief(Mode.IN_PERSON, 8, 90)).instance().weights().pause())
        .isEqualTo(15 * weights().idle());
  }

  @Test
  void no_breaks_cost_nothing() {
    BriefBuilder unbroken =
        brief(60).rhythm(new Rhythm(Sample.minutes(30), Sample.minutes(60), Sample.minutes(0)));

    assertThat(reduce(unbroken).instance().weights().pause()).isZero();
  }

  @Test
  void ten_minutes_off_a_phase_s_share_are_as_bad_as_five_minutes_one_level_off() {
    assertThat(10 * weights().share()).isEqualTo(levelOff(5));
  }

  @Test
  void a_stretch_ten_minutes_too_short_is_as_bad_as_five_minutes_one_level_off() {
    assertThat(10 * weights().rhythm()).isEqualTo(levelOff(5));
  }

  @Test
  void strangers_want_to_know_who_is_there() {
    BriefBuilder strangers = brief(90).acquaintance(Acquaintance.STRANGERS);

    assertThat(extra(strangers, "race")).isEqualTo(levelOff(20));
    assertThat(extra(strangers, "names")).isZero();
    assertThat(extra(strangers, "dots")).isZero();
  }

  @Test
  void colleagues_need_no_introductions() {
    BriefBuilder colleagues = brief(90).acquaintance(Acquaintance.COLLEAGUES);

    assertThat(extra(colleagues, "names")).isEqualTo(levelOff(10));
    assertThat(extra(colleagues, "race")).isZero();
  }

  @Test
  void some_know_some_so_either_will_do() {
    assertThat(extra(brief(90), "names")).isZero();
    assertThat(extra(brief(90), "race")).isZero();
  }

  @Test
  void six_small_groups_can_be_looked_after_and_each_one_more_costs() {
    assertThat(extra(Sample.brief(Mode.REMOTE, 30, 90), sample().groups(3, 5))).isZero();
    assertThat(extra(Sample.brief(Mode.REMOTE, 31, 90), sample().groups(3, 5)))
        .isEqualTo(levelOff(2));
    assertThat(extra(Sample.brief(Mode.REMOTE, 200, 90), sample().groups(3, 5)))
        .isEqualTo(levelOff(20));
  }

  @Test
  void asking_for_less_openness_than_allowed_is_fine() {
    assertThat(extra(brief(90).openness(3), sample().openness(0))).isZero();
    assertThat(extra(brief(90).openness(3), sample().openness(3))).isZero();
  }

  private static int levelOff(int minutes) {
    return minutes * ONE_LEVEL * weights().energy();
  }

  private static Instance.Weights weights() {
    return reduce(brief(90)).instance().weights();
  }

  private static SampleExercise sample() {
    return SampleExercise.of("sample", Kind.DIVERGENT, 10, 15, 20, "idea-pool");
  }

  private static int extra(BriefBuilder brief, SampleExercise sample) {
    Exercise exercise = sample.build();
    return candidate(reduce(brief, exercise), exercise.id()).cost() - levelOff(5);
  }

  /** What it costs beside the five minutes that each exercise costs. */
  private static int extra(BriefBuilder brief, String id) {
    return candidate(reduce(brief), id).cost() - levelOff(5);
  }
}
