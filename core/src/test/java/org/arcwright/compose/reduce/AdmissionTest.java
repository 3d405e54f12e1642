package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.junit.jupiter.api.Test;

/** Which exercises a brief does not allow, each with the reason that a person reads. */
class AdmissionTest {

  @Test
  void too_few_people() {
    assertThat(reason(brief(90), odd().people(12, 100).build()))
        .isEqualTo("not for 8 people: made for 12 to 100");
  }

  @Test
  void too_many_people() {
    assertThat(reason(brief(90), odd().people(3, 6).build()))
        .isEqualTo("not for 8 people: made for 3 to 6");
  }

  @Test
  void people_who_do_not_split_into_its_groups() {
    Exercise inGroups = odd().groups(4, 6).build();

    assertThat(reason(Sample.brief(Mode.REMOTE, 7, 90), inGroups))
        .isEqualTo("not for 7 people: they do not split into groups of 4-6");
    assertThat(reduce(Sample.brief(Mode.REMOTE, 8, 90), inGroups).leftOut())
        .doesNotContainKey("odd");
  }

  @Test
  void not_possible_in_this_mode() {
    Exercise nowhere = odd().in(Mode.REMOTE, 0).in(Mode.IN_PERSON, 0).in(Mode.HYBRID, 0).build();

    assertThat(reason(Sample.brief(Mode.REMOTE, 8, 90), nowhere))
        .isEqualTo("not possible remotely");
    assertThat(reason(Sample.brief(Mode.IN_PERSON, 8, 90), nowhere))
        .isEqualTo("not possible in person");
    assertThat(reason(Sample.brief(Mode.HYBRID, 8, 90), nowhere))
        .isEqualTo("not possible with some in a room and some at screens");
  }

  @Test
  void a_tool_that_is_not_at_hand_named_in_words() {
    Exercise rooms = odd().in(Mode.REMOTE, 3, "call", "breakouts").build();

    assertThat(reason(brief(90).tools(List.of("call")), rooms))
        .isEqualTo("needs what is not at hand: breakout rooms");
  }

  @Test
  void no_tools_named_means_those_usual_for_the_mode() {
    Exercise usual = odd().in(Mode.REMOTE, 3, "call", "breakouts").build();
    Exercise rare = odd().in(Mode.REMOTE, 3, "music").build();

    assertThat(reduce(brief(90), usual).leftOut()).doesNotContainKey("odd");
    assertThat(reason(brief(90), rare)).isEqualTo("needs what is not at hand: shared music");
    assertThat(reduce(brief(90).tools(List.of("music")), rare).leftOut()).doesNotContainKey("odd");
  }

  @Test
  void too_personal() {
    Exercise deep = odd().openness(3).build();

    assertThat(reason(brief(90), deep))
        .isEqualTo("too personal for this group: openness 3, at most 1 here");
    assertThat(reduce(brief(90).openness(3), deep).leftOut()).doesNotContainKey("odd");
  }

  @Test
  void longer_than_the_longest_stretch() {
    assertThat(
            reason(
                brief(240),
                SampleExercise.of("odd", Kind.DIVERGENT, 61, 70, 80, "arrival").build()))
        .isEqualTo("too long: takes at least 65 minutes; without a break people work at most 60");
  }

  @Test
  void longer_than_the_time_at_hand() {
    assertThat(
            reason(
                brief(30), SampleExercise.of("odd", Kind.DIVERGENT, 31, 40, 50, "arrival").build()))
        .isEqualTo("too long: takes at least 35 minutes; the workshop has 30 in all");
  }

  @Test
  void as_long_as_the_time_at_hand_or_the_longest_stretch_is_short_enough() {
    assertThat(reduce(brief(30), lasting(30)).instance().candidateIds()).contains("odd");
    assertThat(reduce(brief(240), lasting(60)).instance().candidateIds()).contains("odd");
  }

  @Test
  void left_out_by_the_brief() {
    Wishes wishes = new Wishes(Set.of(), Set.of("odd"), List.of(), Set.of());

    assertThat(reason(brief(90).wishes(wishes), odd().build())).isEqualTo("left out by the brief");
  }

  @Test
  void of_a_kind_that_the_arc_has_no_place_for() {
    Exercise reflection = SampleExercise.of("odd", Kind.REFLECTION, 5, 5, 5, "feedback").build();
    Catalog catalog = ShortArc.catalog(reflection);
    Brief brief = Brief.builder("Short", ShortArc.GOAL, Mode.REMOTE, 8, minutes(60)).build();

    assertThat(Reducer.reduce(brief, catalog, () -> false).leftOut())
        .containsEntry(
            "odd",
            Refusal.by("goal", "of the kind \"reflection\", for which this goal has no phase"));
  }

  @Test
  void needs_what_nothing_here_leaves() {
    Exercise needy = odd().needs("feedback").build();
    Catalog withoutFeedback =
        Sample.only(
            List.of(
                needy,
                SampleExercise.of("chat", Kind.CONVERGENT, 5, 5, 5, "introductions").build(),
                SampleExercise.of("next", Kind.CONVERGENT, 5, 5, 5, "decision")
                    .needs("shortlist")
                    .build(),
                SampleExercise.of("circle", Kind.CONVERGENT, 5, 5, 5, "shortlist")
                    .needs("decision")
                    .build()));

    Reduction reduction = Reducer.reduce(brief(90).build(), withoutFeedback, () -> false);

    assertThat(reduction.instance().candidateIds()).containsExactly("chat");
    assertThat(reduction.leftOut())
        .containsEntry("odd", missing("feedback"))
        .containsEntry("next", missing("shortlist"))
        .containsEntry("circle", missing("decision"));
  }

  @Test
  void what_is_missing_is_called_by_its_title() {
    Catalog withoutIdeas = Sample.only(List.of(odd().needs("idea-pool").build()));

    assertThat(Reducer.reduce(brief(90).build(), withoutIdeas, () -> false).leftOut())
        .containsEntry("odd", missing("idea pool"));
  }

  @Test
  void what_the_sponsor_brings_along_counts() {
    Exercise needy = odd().needs("feedback").build();
    Catalog catalog = Sample.only(List.of(needy));

    assertThat(
            Reducer.reduce(brief(90).given(List.of("feedback")).build(), catalog, () -> false)
                .leftOut())
        .isEmpty();
  }

  @Test
  void a_stretch_is_as_long_as_the_rhythm_says() {
    BriefBuilder brief = brief(240).rhythm(new Rhythm(minutes(30), minutes(90), minutes(15)));

    assertThat(
            reduce(brief, SampleExercise.of("odd", Kind.DIVERGENT, 61, 70, 80, "arrival").build())
                .leftOut())
        .doesNotContainKey("odd");
  }

  private static Exercise lasting(int minutes) {
    return SampleExercise.of("odd", Kind.DIVERGENT, minutes, minutes, minutes, "idea-pool").build();
  }

  private static SampleExercise odd() {
    return SampleExercise.of("odd", Kind.DIVERGENT, 10, 15, 20, "idea-pool");
  }

  private static String reason(BriefBuilder brief, Exercise exercise) {
    return reduce(brief, exercise).leftOut().get("odd").reason();
  }

  private static Refusal missing(String product) {
    return Refusal.by("given", "needs what nothing here leaves: the " + product);
  }
}
