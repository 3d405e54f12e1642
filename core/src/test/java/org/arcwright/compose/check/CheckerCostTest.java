package org.arcwright.compose.check;

import static org.arcwright.compose.check.Example.ITEMS;
import static org.arcwright.compose.check.Example.OBJECTS;
import static org.arcwright.compose.check.Example.draft;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.junit.jupiter.api.Test;

/** What a list costs, worked out by hand from the problem statement. */
class CheckerCostTest {
  @Test
  void costs_what_was_worked_out_by_hand() {
    assertThat(Checker.check(draft().build(), ITEMS).cost())
        .isEqualTo(
            new Cost(
                12 + 6 + 4 + 2, // the exercises' own
                0 + 0 + 3 + 0, // notes in 15 minutes rather than 20
                10 * 10 + 15 * 5 + 15 * 4 + 15 * 6, // minutes × tenths off 30, 30, 24, 24
                10 * (0 + 5 + 5), // 10 of 10, 30 of 25, 15 of 20 minutes
                60 + 30, // pairs after pairs; pairs after pairs and a break
                5 * (30 - 25) + 0, // before the break 25 minutes of 30; after it 30
                20, // one break
                2 * (80 - 65 - 10))); // the buffer is 15 % of 55, rounded up from 8.25
  }

  @Test
  void sums_the_hashes_of_all_items() {
    long sum =
        Fnv.hash("two-objects/0/0/10")
            + Fnv.hash("walk-in-twos/1/10/15")
            + Fnv.hash("break//25/10")
            + Fnv.hash("notes-in-twos/1/35/15")
            + Fnv.hash("dot-choice/2/50/15");
    assertThat(Checker.check(draft().build(), ITEMS).tie()).isEqualTo(sum);
  }

  @Test
  void charges_no_rhythm_without_a_break() {
    Instance instance = draft().stretch(60, 60).build();
    Item notes = new Activity("notes-in-twos", 1, 10, 15);
    Item choice = new Activity("dot-choice", 2, 25, 15);
    Cost cost = Checker.check(instance, List.of(OBJECTS, notes, choice)).cost();
    assertThat(cost.rhythm()).isZero();
    assertThat(cost.pauses()).isZero();
  }

  @Test
  void charges_the_last_stretch_after_a_meal_but_not_the_one_before() {
    Instance instance = draft().stretch(40, 60).meals(new Meal(25, 30, 10)).build();
    Cost cost = Checker.check(instance, ITEMS).cost();
    assertThat(cost.rhythm()).isEqualTo(5 * (40 - 30));
    assertThat(cost.pauses()).isZero();
  }

  @Test
  void charges_each_pair_of_the_same_format_across_a_meal_as_across_a_break() {
    Instance instance = draft().meals(new Meal(25, 30, 10)).build();
    assertThat(Checker.check(instance, ITEMS).cost().monotony()).isEqualTo(60 + 30);
  }

  @Test
  void reads_the_break_as_a_meal_that_saves_most() {
    // Both breaks may be the meal: the first follows 10 minutes of 30, the second 25.
    Instance instance = draft().cap(100).meals(new Meal(10, 60, 10)).build();
    List<Item> items =
        List.of(
            OBJECTS,
            new Pause(10, 10),
            new Activity("notes-in-twos", 1, 20, 20),
            new Pause(40, 10),
            new Activity("dot-choice", 2, 50, 25));
    Verdict verdict = Checker.check(instance, items);
    assertThat(verdict.findings()).isEmpty();
    assertThat(verdict.cost().rhythm()).isEqualTo(5 * (30 - 20) + 5 * (30 - 25));
    assertThat(verdict.cost().pauses()).isEqualTo(20);
  }

  @Test
  void reads_two_breaks_as_two_meals_only_in_their_order() {
    // The second break is in both windows, the first in the first meal's alone.
    Instance instance = draft().cap(100).meals(new Meal(5, 45, 10), new Meal(40, 60, 10)).build();
    List<Item> items =
        List.of(
            OBJECTS,
            new Pause(10, 10),
            new Activity("notes-in-twos", 1, 20, 20),
            new Pause(40, 10),
            new Activity("dot-choice", 2, 50, 25));
    Verdict verdict = Checker.check(instance, items);
    assertThat(verdict.findings()).isEmpty();
    assertThat(verdict.cost().pauses()).isZero();
  }

  @Test
  void weighs_each_part_by_its_own_weight() {
    Instance energy = draft().weights(new Weights(3, 0, 0, 0, 0, 0, 0)).build();
    assertThat(Checker.check(energy, ITEMS).cost())
        .isEqualTo(new Cost(24, 3, 3 * 325, 0, 0, 0, 0, 0));
    Instance idle = draft().weights(new Weights(0, 0, 0, 0, 0, 0, 7)).build();
    assertThat(Checker.check(idle, ITEMS).cost()).isEqualTo(new Cost(24, 3, 0, 0, 0, 0, 0, 7 * 5));
  }
}
