package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.candidate;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.arcwright.compose.reduce.Sample.phase;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.junit.jupiter.api.Test;

class OwnItemsTest {
  private static final String KIND = "own item talk";

  @Test
  void become_candidates_of_their_own_kind_that_must_appear_and_cost_nothing() {
    Reduction reduction = reduce(brief(120).ownItem(talk(20, "explore", null)));

    assertThat(candidate(reduction, "talk"))
        .isEqualTo(
            new Candidate(
                "talk", KIND, List.of(20), List.of(0), 20, "plenary", List.of(), List.of(), 0));
    assertThat(reduction.instance().include()).containsExactly("talk");
    assertThat(reduction.instance().pins()).isEmpty();
    assertThat(reduction.instance().candidates()).extracting(Candidate::id).isSorted();
  }

  @Test
  void with_a_time_are_pinned() {
    assertThat(reduce(brief(120).ownItem(talk(20, null, 45))).instance().pins())
        .containsExactly(new Instance.Pin("talk", 45));
  }

  /** 120 minutes leave 95 for exercises, and without the talk 75: explore has 25 to 45 % of it. */
  @Test
  void widen_their_phase_so_that_the_arc_s_own_exercises_are_still_asked_for() {
    Reduction reduction = reduce(brief(120).ownItem(talk(20, "explore", null)));

    Instance.Phase explore = phase(reduction, "explore");
    assertThat(explore.kinds()).containsExactlyInAnyOrder("divergent", KIND);
    assertThat(explore.count()).isEqualTo(new Bounds(2, 4));
    assertThat(explore.minutes()).isEqualTo(new Bounds(15 + 20, 35 + 20));
    assertThat(explore.target()).isEqualTo(26 + 20);
    assertThat(phase(reduction, "open").kinds()).containsExactly("icebreaker");
    assertThat(phase(reduction, "open").count()).isEqualTo(new Bounds(1, 2));
  }

  @Test
  void without_a_phase_may_stand_in_any_and_are_expected_where_their_time_falls() {
    Reduction reduction = reduce(brief(120).ownItem(talk(20, null, 70)));

    for (Instance.Phase phase : reduction.instance().phases()) {
      assertThat(phase.kinds()).contains(KIND);
    }
    assertThat(phase(reduction, "narrow").count()).isEqualTo(new Bounds(1, 3));
    assertThat(phase(reduction, "narrow").minutes()).isEqualTo(new Bounds(10, 30 + 20));
    assertThat(phase(reduction, "narrow").target()).isEqualTo(19 + 20);
    assertThat(phase(reduction, "explore").target()).isEqualTo(26);
  }

  /** Of 120 minutes the phases should end at 14, 56, 86, 108 and 120. */
  @Test
  void are_expected_in_the_phase_that_should_run_at_their_time() {
    assertThat(expectedAt(0)).isEqualTo("open");
    assertThat(expectedAt(13)).isEqualTo("open");
    assertThat(expectedAt(14)).isEqualTo("explore");
    assertThat(expectedAt(85)).isEqualTo("narrow");
    assertThat(expectedAt(86)).isEqualTo("decide");
    assertThat(expectedAt(108)).isEqualTo("close");
    assertThat(expectedAt(119)).isEqualTo("close");
  }

  @Test
  void without_phase_and_time_are_expected_in_the_middle() {
    assertThat(longestPhase(reduce(brief(120).ownItem(talk(20, null, null))))).isEqualTo("narrow");
  }

  /** On a grid of five minutes 93 are 90, so the talk would begin when all is over. */
  @Test
  void at_the_very_end_are_expected_in_the_last_phase() {
    assertThat(longestPhase(reduce(brief(93).ownItem(talk(20, null, 90))))).isEqualTo("close");
  }

  @Test
  void are_each_expected_at_their_own_time() {
    OwnItem greeting =
        new OwnItem(
            "a-greeting",
            "The sponsor greets",
            minutes(5),
            Optional.empty(),
            Optional.of(new Moment.After(minutes(0))),
            2,
            Format.PLENARY);
    Reduction reduction = reduce(brief(120).ownItem(greeting).ownItem(talk(20, null, 110)));

    // 95 - 25 minutes are shared out, 12 and 10 per cent of them
    assertThat(phase(reduction, "open").target()).isEqualTo(8 + 5);
    assertThat(phase(reduction, "close").target()).isEqualTo(7 + 20);
    assertThat(reduction.instance().candidates()).extracting(Candidate::id).isSorted();
  }

  @Test
  void may_fill_a_whole_stretch() {
    Reduction reduction = reduce(brief(240).ownItem(talk(60, null, null)));

    assertThat(candidate(reduction, "talk").lengths()).containsExactly(60);
    assertThat(reduction.leftOut()).doesNotContainKey("talk");
  }

  @Test
  void appear_in_the_agenda_at_their_time() {
    Instance instance = reduce(brief(120).ownItem(talk(20, null, 70))).instance();

    assertThat(Search.solve(instance, Limit.NONE).items())
        .anyMatch(
            item ->
                item instanceof Item.Activity activity
                    && activity.id().equals("talk")
                    && activity.start() == 70
                    && activity.length() == 20);
  }

  @Test
  void longer_than_a_stretch_stay_wished_for_and_the_reason_is_kept() {
    Reduction reduction = reduce(brief(240).ownItem(talk(75, "explore", null)));

    assertThat(reduction.leftOut())
        .containsEntry(
            "talk",
            Refusal.by(
                "rhythm.stretch",
                "too long: takes 75 minutes; without a break people work at most 60"));
    assertThat(reduction.instance().include()).containsExactly("talk");
    assertThat(reduction.instance().candidateIds()).doesNotContain("talk");
  }

  @Test
  void in_a_phase_that_the_goal_does_not_have_are_refused() {
    assertThatThrownBy(() -> reduce(brief(120).ownItem(talk(20, "explor", null))))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "own-items.phase is explor: there is no such phase in this goal's arc; perhaps explore");
  }

  @Test
  void named_like_an_exercise_are_refused() {
    OwnItem dots =
        new OwnItem(
            "dots", "Dots", minutes(5), Optional.empty(), Optional.empty(), 3, Format.PLENARY);

    assertThatThrownBy(() -> reduce(brief(120).ownItem(dots)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("own-items is dots: the catalog has an exercise of that id; choose another");
  }

  private static String expectedAt(int minute) {
    return longestPhase(reduce(brief(120).ownItem(talk(20, null, minute))));
  }

  /** With twenty minutes more, any phase should be longer than all others of this brief. */
  private static String longestPhase(Reduction reduction) {
    return Collections.max(
            reduction.instance().phases(), Comparator.comparingInt(Instance.Phase::target))
        .name();
  }

  private static OwnItem talk(int length, String phase, Integer at) {
    return new OwnItem(
        "talk",
        "A guest speaks",
        minutes(length),
        Optional.ofNullable(phase),
        Optional.ofNullable(at).map(minute -> new Moment.After(minutes(minute))),
        2,
        Format.PLENARY);
  }
}
