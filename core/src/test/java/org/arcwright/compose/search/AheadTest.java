package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.oracle.Draft;
import org.junit.jupiter.api.Test;

/**
 * Places that are refused because the day has no room for what must come, worked by hand. There are
 * six cells; the first exercise of the first phase starts with the day, and the longest that fits
 * is asked for.
 */
class AheadTest {
  private static final int CELLS = 6;

  @Test
  void the_next_phase_keeps_room_for_its_shortest_exercise() {
    assertThat(longest(two(first(1, 2, 0, 60), second(1, 0)))).isEqualTo(5);
  }

  @Test
  void the_next_phase_keeps_room_for_its_fewest_exercises_or_its_least_minutes() {
    assertThat(longest(two(first(1, 2, 0, 60), second(2, 0)))).isEqualTo(4);
    assertThat(longest(two(first(1, 2, 0, 60), second(1, 30)))).isEqualTo(3);
    assertThat(longest(two(first(1, 2, 0, 60), second(2, 30)))).isEqualTo(3);
  }

  @Test
  void a_phase_has_room_for_what_it_must_still_hold() {
    assertThat(longest(two(first(1, 3, 0, 30), second(1, 0)))).isEqualTo(3);
    assertThat(longest(two(first(2, 3, 0, 30), second(1, 0)))).isEqualTo(2);
    assertThat(longest(two(first(3, 3, 0, 30), second(1, 0)))).isEqualTo(1);
    assertThat(longest(two(first(1, 3, 50, 60), second(1, 0)))).isEqualTo(5);
    assertThat(longest(two(first(2, 3, 0, 60), second(1, 0)))).isEqualTo(4);
  }

  /** Half of the exercise time: with three and one cells two stay free. */
  @Test
  void the_closing_buffer_is_kept() {
    assertThat(longest(two(first(1, 2, 0, 60), second(1, 0)).bufferPercent(50))).isEqualTo(3);
    assertThat(longest(two(first(1, 2, 0, 60), second(1, 30)).bufferPercent(50))).isEqualTo(1);
  }

  @Test
  void breaks_that_must_come_are_kept() {
    Draft pairs = brisk(first(1, 2, 0, 60), second(1, 20)).breakMinutes(10);
    assertThat(fits(pairs, 2)).isTrue(); // 2, a break, 2
    assertThat(fits(brisk(first(1, 2, 0, 60), second(1, 30)).breakMinutes(10), 2))
        .isFalse(); // 2, two breaks, 3
    assertThat(fits(pairs.breakMinutes(30), 2)).isFalse();
  }

  @Test
  void without_breaks_one_stretch_must_do() {
    Draft none = brisk(first(1, 2, 0, 60), second(1, 0));
    assertThat(fits(none, 1)).isTrue();
    assertThat(fits(none, 2)).isFalse();
  }

  @Test
  void a_meal_takes_its_time_and_does_for_a_break() {
    Draft two = two(first(1, 2, 0, 60), second(1, 0)).meals(new Meal(0, 60, 20));
    assertThat(longest(two)).isEqualTo(3);
    Draft quick = brisk(first(1, 2, 0, 60), second(1, 20));
    assertThat(fits(quick, 2)).isFalse();
    assertThat(fits(quick.meals(new Meal(0, 60, 20)), 2)).isTrue();
    assertThat(fits(quick.meals(new Meal(0, 60, 30)), 2)).isFalse();
  }

  @Test
  void a_meal_is_not_missed() {
    Draft early = two(first(1, 2, 0, 60), second(1, 0)).meals(new Meal(0, 20, 10));
    assertThat(longest(early)).isEqualTo(2);
    Facts facts = facts(early);
    Step afterIt = Step.of(facts, Place.START, 0, 1, 1, 0);
    assertThat(ahead(facts).fits(afterIt, 4, 0)).isTrue();
    assertThat(ahead(facts).fits(afterIt, 5, 0)).isFalse();
  }

  @Test
  void what_a_phase_owes_takes_its_shortest_exercise() {
    Phase owing =
        new Phase("first", Set.of("first"), new Bounds(1, 3), new Bounds(0, 30), 0, List.of("p"));
    Candidate yielding =
        new Candidate("a", "first", List.of(10), List.of(0), 30, "any", List.of(), List.of("p"), 0);
    Facts facts =
        facts(
            two(owing, second(1, 0))
                .products(List.of("p"))
                .candidates(List.of(yielding, Models.candidate("b", "second", 0))));
    Step step = Step.of(facts, Place.START, 0, 0, 0, 0);
    assertThat(ahead(facts).fits(step, 2, 0)).isTrue();
    assertThat(ahead(facts).fits(step, 3, 0)).isFalse();
    assertThat(ahead(facts).fits(step, 3, 1)).isTrue();
  }

  /** Of 20 minutes each: the longer exercises of both phases. */
  @Test
  void what_is_wished_takes_its_own_time() {
    Draft wished = two(first(1, 3, 0, 60), second(1, 0)).include("first-20", "second-20");
    assertThat(longest(wished)).isEqualTo(2);
    assertThat(longest(two(first(1, 3, 0, 30), second(1, 0)).include("first-20"))).isEqualTo(1);
    Draft both = two(first(1, 3, 0, 60), second(1, 0)).include("first-20", "first-30");
    assertThat(longest(both)).isZero();
    Facts facts = facts(both);
    Step step = Step.of(facts, Place.START, 0, 0, 0, 0);
    assertThat(ahead(facts).fits(step, 2, 1)).isTrue(); // itself the first wish
    assertThat(ahead(facts).fits(step, 3, 1)).isFalse();
    assertThat(ahead(facts).fits(step, 3, 2)).isTrue(); // itself the second
    assertThat(ahead(facts).fits(step, 4, 2)).isFalse();
  }

  @Test
  void a_pinned_start_is_met_by_an_exercise_or_a_break_before_it() {
    Draft pinned = two(first(1, 2, 0, 60), second(1, 0)).pins(new Pin("second-10", 40));
    assertThat(fits(pinned, 4)).isTrue();
    assertThat(fits(pinned, 3)).isTrue();
    assertThat(fits(pinned, 2)).isTrue();
    Draft slow =
        two(first(1, 2, 0, 60), second(1, 0))
            .candidates(
                List.of(
                    Models.candidate("a", "first", 0, 20), Models.candidate("b", "second", 0, 20)))
            .pins(new Pin("b", 40));
    assertThat(fits(slow, 2)).isTrue();
    assertThat(fits(slow, 3)).isFalse();
    assertThat(fits(slow.breakMinutes(10), 3)).isTrue();
    assertThat(fits(slow.breakMinutes(20), 3)).isFalse();
    assertThat(fits(slow.breakMinutes(20), 2)).isTrue();
  }

  @Test
  void what_must_come_before_a_pinned_start_has_room_there() {
    Pin pin = new Pin("third-10", 40);
    Draft three = three(first(1, 2, 0, 60), second(1, 0)).pins(pin);
    assertThat(fits(three, 3)).isTrue();
    assertThat(fits(three, 4)).isFalse();
    assertThat(fits(three(first(2, 2, 0, 60), second(1, 0)).pins(pin), 2)).isTrue();
    assertThat(fits(three(first(2, 2, 0, 60), second(1, 0)).pins(pin), 3)).isFalse();
    assertThat(fits(three(first(1, 2, 0, 60), second(1, 20)).pins(pin), 2)).isTrue();
    assertThat(fits(three(first(1, 2, 0, 60), second(1, 20)).pins(pin), 3)).isFalse();
  }

  @Test
  void a_pinned_exercise_of_a_phase_gone_by_cannot_come() {
    Draft pinned = two(first(1, 2, 0, 60), second(1, 0)).pins(new Pin("first-10", 30));
    Facts facts = facts(pinned);
    Place begun = Step.of(facts, Place.START, 0, 0, 0, 0).place(0, 1, 0, 0);
    assertThat(ahead(facts).fits(Step.of(facts, begun, 0, 0, 0, 0), 1, 0)).isTrue();
    assertThat(ahead(facts).fits(Step.of(facts, begun, 1, 0, 0, 0), 1, 0)).isFalse();
  }

  @Test
  void a_phase_that_cannot_hold_what_it_must_is_told_before_the_start() {
    assertThat(mayBegin(two(first(2, 2, 0, 20), second(1, 0)))).isTrue();
    assertThat(mayBegin(two(first(3, 3, 0, 20), second(1, 0)))).isFalse();
    assertThat(mayBegin(two(first(1, 3, 0, 20), second(1, 0)).include("first-20"))).isTrue();
    assertThat(mayBegin(two(first(1, 3, 0, 20), second(1, 0)).include("first-30"))).isFalse();
  }

  private static boolean mayBegin(Draft draft) {
    return ahead(facts(draft)).mayBegin();
  }

  private static boolean fits(Draft draft, int length) {
    Facts facts = facts(draft);
    return ahead(facts).fits(Step.of(facts, Place.START, 0, 0, 0, 0), length, 0);
  }

  /** The longest first exercise that fits, in cells; each shorter one must fit, too. */
  private static int longest(Draft draft) {
    int longest = (int) IntStream.rangeClosed(1, CELLS).takeWhile(l -> fits(draft, l)).count();
    assertThat(IntStream.rangeClosed(longest + 1, CELLS)).noneMatch(l -> fits(draft, l));
    return longest;
  }

  private static Facts facts(Draft draft) {
    return Facts.of(draft.build(), Models.work()).orElseThrow();
  }

  private static Ahead ahead(Facts facts) {
    int[][] usable = new int[facts.phases][];
    for (int p = 0; p < usable.length; p++) {
      int phase = p;
      usable[p] =
          IntStream.range(0, facts.ids.length).filter(i -> facts.usable(i, phase)).toArray();
    }
    return new Ahead(facts, usable);
  }

  private static Phase first(int fewest, int most, int least, int longest) {
    return phase("first", new Bounds(fewest, most), new Bounds(least, longest));
  }

  private static Phase second(int fewest, int least) {
    return phase("second", new Bounds(fewest, 3), new Bounds(least, 60));
  }

  private static Phase phase(String kind, Bounds count, Bounds minutes) {
    return new Phase(kind, Set.of(kind), count, minutes, 0, List.of());
  }

  private static Draft two(Phase first, Phase second) {
    return of(30, first, second);
  }

  private static Draft three(Phase first, Phase second) {
    return of(30, first, second, phase("third", new Bounds(1, 1), new Bounds(0, 60)));
  }

  /** No more than 20 minutes in a row. */
  private static Draft brisk(Phase first, Phase second) {
    return of(20, first, second).stretch(0, 20);
  }

  /** Of each kind one of 10 minutes, one of 20 and so on. */
  private static Draft of(int longest, Phase... phases) {
    List<Candidate> candidates = new ArrayList<>();
    for (Phase phase : phases) {
      for (int minutes = 10; minutes <= longest; minutes += 10) {
        candidates.add(Models.candidate(phase.name() + "-" + minutes, phase.name(), 0, minutes));
      }
    }
    return Models.hour(phases).candidates(candidates);
  }
}
