package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.allowed;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.junit.jupiter.api.Test;

/** Where exercises may stand in an arc whose phases share their kinds. */
class PlacementTest {
  private static final List<Phase> ARC =
      List.of(
          phase("look", Set.of(Kind.REFLECTION, Kind.CONVERGENT), "lookback"),
          phase("causes", Set.of(Kind.DIVERGENT, Kind.CONVERGENT), "causes"),
          phase("ideas", Set.of(Kind.DIVERGENT, Kind.CONVERGENT), "idea-pool"),
          phase("decide", Set.of(Kind.CONVERGENT, Kind.DECISION), "decision"),
          phase("close", Set.of(Kind.REFLECTION), "takeaways"));
  private static final Exercise MATRIX =
      exercise("matrix", Kind.DECISION, "decision").needs("options", "question", "items").build();

  @Test
  void where_they_leave_what_a_phase_must_leave() {
    assertThat(phases(exercise("why", Kind.DIVERGENT, "causes"))).containsExactly("causes");
    assertThat(phases(exercise("talk", Kind.REFLECTION, "takeaways"))).containsExactly("close");
  }

  @Test
  void last_before_the_exercises_that_need_what_they_leave() {
    assertThat(phases(exercise("sketches", Kind.CONVERGENT, "options"))).containsExactly("decide");
  }

  @Test
  void sorted_and_measured_is_before_anything_is_picked() {
    assertThat(phases(exercise("clusters", Kind.CONVERGENT, "themes"))).containsExactly("ideas");
    assertThat(phases(exercise("measures", Kind.CONVERGENT, "criteria"))).containsExactly("ideas");
  }

  @Test
  void where_they_go_on_from_what_the_phase_must_leave() {
    assertThat(phases(exercise("plan", Kind.CONVERGENT, "actions").needs("decision")))
        .containsExactly("decide");
    assertThat(phases(exercise("walk", Kind.CONVERGENT, "actions").needs("causes")))
        .containsExactly("look", "causes", "ideas", "decide");
  }

  @Test
  void what_exists_beforehand_or_is_just_any_list_calls_for_no_place() {
    assertThat(phases(exercise("reword", Kind.CONVERGENT, "question")))
        .containsExactly("look", "causes", "ideas", "decide");
    assertThat(phases(exercise("listing", Kind.CONVERGENT, "items")))
        .containsExactly("look", "causes", "ideas", "decide");
  }

  @Test
  void an_exercise_that_may_not_stand_wherever_its_kind_may_is_of_a_kind_of_its_own() {
    Allowed both =
        allowed(SampleExercise.of("both", Kind.CONVERGENT, 5, 5, 5, "causes", "decision").build());
    Allowed chat = allowed(exercise("chat", Kind.CONVERGENT, "introductions").build());
    Placement placement = new Placement(ARC, Set.of(), List.of(both, chat));

    assertThat(placement.kind(both)).isEqualTo("convergent/causes+decide");
    assertThat(placement.kind(chat)).isEqualTo("convergent");
    assertThat(placement.kinds(0)).containsExactlyInAnyOrder("reflection", "convergent");
    assertThat(placement.kinds(1))
        .containsExactlyInAnyOrder("divergent", "convergent", "convergent/causes+decide");
    assertThat(placement.kinds(3))
        .containsExactlyInAnyOrder("convergent", "decision", "convergent/causes+decide");
  }

  @Test
  void how_the_workshop_went_is_asked_at_the_close() {
    assertThat(phases(exercise("form", Kind.REFLECTION, "feedback"))).containsExactly("close");
  }

  @Test
  void what_is_of_no_use_in_particular_wherever_its_kind_may_be() {
    assertThat(phases(exercise("chat", Kind.CONVERGENT, "introductions")))
        .containsExactly("look", "causes", "ideas", "decide");
  }

  private static List<String> phases(SampleExercise sample) {
    Exercise exercise = sample.build();
    List<Allowed> allowed = List.of(allowed(exercise), allowed(MATRIX));
    Placement placement = new Placement(ARC, Set.of("question"), allowed);
    String kind = placement.kind(allowed.get(0));
    List<String> phases = new ArrayList<>();
    for (int i = 0; i < ARC.size(); i++) {
      if (placement.kinds(i).contains(kind)) {
        phases.add(ARC.get(i).name());
      }
    }
    return phases;
  }

  private static SampleExercise exercise(String id, Kind kind, String yields) {
    return SampleExercise.of(id, kind, 5, 5, 5, yields);
  }

  private static Phase phase(String name, Set<Kind> kinds, String yields) {
    return new Phase(name, "To " + name, kinds, 1, 3, new Phase.Share(5, 20, 60), Set.of(yields));
  }
}
