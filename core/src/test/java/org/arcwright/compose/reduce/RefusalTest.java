package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Rhythm;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.junit.jupiter.api.Test;

/** The line of a brief at which to look when it leaves an exercise out. */
class RefusalTest {

  @Test
  void the_goal_has_no_phase_for_it() {
    Goal gather =
        new Goal(
            Sample.GOAL,
            "Gather",
            "To gather.",
            Set.of(),
            Set.of(),
            List.of(
                new Phase(
                    "gather",
                    "Gather",
                    Set.of(Kind.DIVERGENT),
                    1,
                    3,
                    new Phase.Share(80, 100, 100),
                    Set.of())));
    Exercise vote = SampleExercise.of("odd", Kind.DECISION, 5, 5, 5, "decision").build();
    Catalog catalog = Catalog.of(Sample.products(), Sample.tools(), List.of(vote), List.of(gather));

    assertThat(field(brief(90), catalog)).isEqualTo("goal");
  }

  @Test
  void too_few_or_too_many_people_or_people_who_do_not_split() {
    assertThat(field(brief(90), odd().people(9, 20))).isEqualTo("people");
    assertThat(field(brief(90), odd().people(1, 7))).isEqualTo("people");
    assertThat(field(Sample.brief(Mode.REMOTE, 7, 90), odd().groups(4, 6))).isEqualTo("people");
  }

  @Test
  void the_mode() {
    assertThat(field(brief(90), odd().in(Mode.REMOTE, 0))).isEqualTo("mode");
  }

  @Test
  void a_tool() {
    assertThat(field(brief(90), odd().in(Mode.REMOTE, 3, "music"))).isEqualTo("tools");
  }

  @Test
  void how_personal_it_is() {
    assertThat(field(brief(90), odd().openness(2))).isEqualTo("people.openness");
  }

  @Test
  void not_how_personal_it_is_if_that_is_no_more_than_the_group_allows() {
    assertThat(field(brief(240).openness(1), lasting(65).openness(1))).isEqualTo("rhythm.stretch");
  }

  @Test
  void its_length_beside_the_stretch_or_the_cap() {
    assertThat(field(brief(240), lasting(65))).isEqualTo("rhythm.stretch");
    assertThat(
            field(brief(60).rhythm(new Rhythm(minutes(30), minutes(90), minutes(10))), lasting(65)))
        .isEqualTo("cap");
  }

  @Test
  void what_it_needs() {
    assertThat(field(brief(90), odd().needs("feedback"))).isEqualTo("given");
  }

  /** As where it is decided: who does not come cannot be made more open. */
  @Test
  void of_several_the_one_that_is_decided_first() {
    assertThat(field(brief(90), odd().people(9, 20).in(Mode.REMOTE, 0).openness(3)))
        .isEqualTo("people");
    assertThat(field(brief(90), odd().in(Mode.REMOTE, 0).openness(3))).isEqualTo("mode");
    assertThat(field(brief(90), odd().in(Mode.REMOTE, 3, "music").openness(3))).isEqualTo("tools");
  }

  private static SampleExercise odd() {
    return SampleExercise.of("odd", Kind.DIVERGENT, 10, 15, 20, "idea-pool");
  }

  private static SampleExercise lasting(int minutes) {
    return SampleExercise.of("odd", Kind.DIVERGENT, minutes, minutes, minutes, "idea-pool");
  }

  private static String field(BriefBuilder brief, SampleExercise odd) {
    return field(brief, Sample.only(List.of(odd.build())));
  }

  private static String field(BriefBuilder brief, Catalog catalog) {
    return Reducer.reduce(brief.build(), catalog, () -> false)
        .leftOut()
        .get("odd")
        .field()
        .orElseThrow();
  }
}
