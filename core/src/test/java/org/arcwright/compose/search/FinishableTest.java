package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.oracle.Draft;
import org.junit.jupiter.api.Test;

/** From where six cells can still be ended, worked by hand; exercises take a cell each. */
class FinishableTest {
  private static final int MOST = 6;

  @Test
  void the_buffer_counts_exercises_and_not_breaks() {
    Draft half = one(1, 0).bufferPercent(50);
    assertThat(At.worked(4).open(half)).isTrue(); // 4 and a buffer of 2
    assertThat(At.worked(5).open(half)).isFalse();
    assertThat(At.worked(3).rested(1).open(half)).isTrue(); // 3, a break, and 2
    assertThat(At.worked(2).rested(3).open(half)).isTrue();
    assertThat(At.worked(4).rested(1).open(half)).isFalse();
  }

  @Test
  void the_buffer_counts_what_must_still_come() {
    assertThat(At.worked(1).open(one(3, 0).bufferPercent(50))).isTrue(); // 3 and 2
    assertThat(At.worked(1).open(one(4, 0).bufferPercent(50))).isTrue(); // 4 and 2
    assertThat(At.worked(1).open(one(5, 0).bufferPercent(50))).isFalse(); // 5 and 3
    assertThat(At.worked(1).open(one(1, 40).bufferPercent(50))).isTrue();
    assertThat(At.worked(1).open(one(1, 50).bufferPercent(50))).isFalse();
    assertThat(At.worked(1).open(one(4, 50).bufferPercent(50))).isFalse();
    assertThat(At.worked(2).open(one(2, 20).bufferPercent(50))).isTrue();
  }

  @Test
  void the_buffer_counts_the_phases_to_come() {
    assertThat(At.worked(2).open(two(2, 0).bufferPercent(50))).isTrue(); // 2, 2 and 2
    assertThat(At.worked(3).open(two(2, 0).bufferPercent(50))).isFalse();
    assertThat(At.worked(1).open(two(3, 0).bufferPercent(50))).isTrue();
    assertThat(At.worked(1).open(two(4, 0).bufferPercent(50))).isFalse();
    assertThat(At.worked(2).open(two(1, 20).bufferPercent(50))).isTrue();
    assertThat(At.worked(2).open(two(1, 30).bufferPercent(50))).isFalse();
    assertThat(At.worked(1).in(1).open(two(1, 0).bufferPercent(50))).isTrue();
  }

  /** Two cells in a row at most, so that four ask for a break. */
  @Test
  void the_breaks_that_must_come_are_counted_beside_the_buffer() {
    Draft breaks = one(4, 0).stretch(0, 20).breakMinutes(10);
    assertThat(At.worked(2).open(breaks.bufferPercent(25))).isTrue(); // 2, 1, 2 and 1
    assertThat(At.worked(2).open(breaks.bufferPercent(26))).isFalse();
    assertThat(At.worked(2).rested(1).fresh(0).open(breaks.bufferPercent(25))).isTrue();
    assertThat(At.worked(2).rested(1).fresh(0).open(breaks.bufferPercent(26))).isFalse();
  }

  @Test
  void a_meal_does_for_a_break_and_takes_its_time() {
    Draft meal = one(4, 0).stretch(0, 20).breakMinutes(10).meals(new Meal(0, 60, 10));
    assertThat(At.worked(2).open(meal.bufferPercent(25))).isTrue(); // 2, the meal, 2 and 1
    assertThat(At.worked(2).open(meal.bufferPercent(26))).isFalse();
    assertThat(At.worked(3).rested(1).had(1).fresh(1).open(meal.bufferPercent(25))).isTrue();
    Draft long20 = one(3, 0).stretch(0, 20).breakMinutes(10).meals(new Meal(0, 60, 20));
    assertThat(At.worked(2).open(long20.bufferPercent(33))).isTrue(); // 2, the meal, 1 and 1
    assertThat(At.worked(2).open(long20.bufferPercent(34))).isFalse();
    assertThat(At.worked(2).rested(2).had(1).fresh(0).open(long20.bufferPercent(33))).isTrue();
  }

  @Test
  void where_a_stretch_is_at_its_end_only_a_rest_goes_on() {
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20))).isFalse();
    assertThat(At.worked(1).open(one(2, 0).stretch(0, 20))).isTrue();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).breakMinutes(10))).isTrue();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).breakMinutes(30))).isTrue();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).breakMinutes(40))).isFalse();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).meals(new Meal(20, 20, 30)))).isTrue();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).meals(new Meal(20, 20, 40)))).isFalse();
    assertThat(At.worked(2).open(one(3, 0).stretch(0, 20).meals(new Meal(30, 40, 10)))).isFalse();
  }

  @Test
  void a_pinned_start_is_no_time_to_rest_and_must_be_met() {
    Draft pinned = one(3, 0).stretch(0, 20).breakMinutes(10);
    assertThat(At.worked(2).open(pinned.pins(new Pin("c1", 20)))).isFalse();
    assertThat(At.worked(2).open(pinned.pins(new Pin("c1", 30)))).isTrue();
    assertThat(At.worked(2).open(pinned.breakMinutes(20).pins(new Pin("c1", 30)))).isFalse();
    assertThat(At.worked(1).open(pinned.pins(new Pin("c1", 10)))).isTrue();
    assertThat(At.worked(5).open(one(1, 0).pins(new Pin("c1", 50)))).isTrue();
    assertThat(At.worked(6).open(one(1, 0).pins(new Pin("c1", 50)))).isTrue();
  }

  /** What must start after a break is one too many, or too long. */
  @Test
  void a_phase_holds_no_more_than_it_may() {
    Pin pin = new Pin("c1", 30);
    assertThat(At.worked(2).open(one(1, 0, 3).breakMinutes(10).pins(pin))).isTrue();
    assertThat(At.worked(2).open(one(1, 0, 2).breakMinutes(10).pins(pin))).isFalse();
    Phase half = phase("any", new Bounds(1, MOST), new Bounds(0, 30));
    Phase third = phase("any", new Bounds(1, MOST), new Bounds(0, 20));
    assertThat(At.worked(2).open(of(half).breakMinutes(10).pins(pin))).isTrue();
    assertThat(At.worked(2).open(of(third).breakMinutes(10).pins(pin))).isFalse();
  }

  @Test
  void what_a_phase_owes_must_come_before_it_ends() {
    Phase owing =
        new Phase("any", Set.of("any"), new Bounds(1, 2), new Bounds(0, 60), 0, List.of("p"));
    Draft draft =
        Models.hour(owing)
            .products(List.of("p"))
            .candidates(
                List.of(
                    Models.candidate("plain", "any", 0),
                    new Candidate(
                        "p",
                        "any",
                        List.of(20),
                        List.of(0),
                        30,
                        "any",
                        List.of(),
                        List.of("p"),
                        0)));
    assertThat(At.worked(1).open(draft)).isTrue();
    assertThat(At.worked(1).having(1).open(draft)).isTrue();
    assertThat(At.worked(2).open(draft)).isFalse();
    assertThat(At.worked(2).having(1).open(draft)).isTrue();
    assertThat(At.worked(1).rested(3).open(draft)).isTrue();
    assertThat(At.worked(1).rested(4).open(draft)).isFalse();
  }

  /** A place after so many exercises of a cell each. */
  private record At(int stage, int worked, int rested, int stretch, int meals, long products) {
    static At worked(int cells) {
      return new At(0, cells, 0, cells, 0, 0);
    }

    At in(int phase) {
      return new At(phase, worked, rested, stretch, meals, products);
    }

    At rested(int cells) {
      return new At(stage, worked, cells, stretch, meals, products);
    }

    /** So many cells since the last rest. */
    At fresh(int cells) {
      return new At(stage, worked, rested, cells, meals, products);
    }

    At had(int eaten) {
      return new At(stage, worked, rested, stretch, eaten, products);
    }

    At having(long bits) {
      return new At(stage, worked, rested, stretch, meals, bits);
    }

    boolean open(Draft draft) {
      Facts facts = Facts.of(draft.build(), Models.work()).orElseThrow();
      Model model = ModelBuilder.build(facts, Models.work()).orElseThrow();
      return Finishable.of(model, facts.possible)
          .orElseThrow()
          .open(stage, worked, worked, worked + rested, stretch, meals, rested, products);
    }
  }

  private static Draft one(int fewest, int least) {
    return one(fewest, least, MOST);
  }

  private static Draft one(int fewest, int least, int most) {
    return of(phase("any", new Bounds(fewest, most), new Bounds(least, 60)));
  }

  private static Draft two(int fewest, int least) {
    return of(
        phase("first", new Bounds(1, MOST), new Bounds(0, 60)),
        phase("second", new Bounds(fewest, MOST), new Bounds(least, 60)));
  }

  private static Phase phase(String kind, Bounds count, Bounds minutes) {
    return new Phase(kind, Set.of(kind), count, minutes, 0, List.of());
  }

  private static Draft of(Phase... phases) {
    List<Candidate> candidates = new ArrayList<>();
    for (Phase phase : phases) {
      for (int i = 0; i < MOST; i++) {
        candidates.add(Models.candidate("c" + candidates.size(), phase.name(), 0));
      }
    }
    return Models.hour(phases).candidates(candidates);
  }
}
