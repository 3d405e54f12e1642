package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Weights;
import org.junit.jupiter.api.Test;

/** Of two labels of which one is no worse in anything that may still matter, one is left. */
class DominanceTest {
  private static final int MONOTONY = 60;
  private static final int ACROSS = 30;
  private static final int IDLE = 2;

  /** After c0 neither c1 nor c2 may come, after c1 not c1; half of all exercise time is buffer. */
  private final Model model =
      Models.of(
          Models.hour(Models.phase("any", 4))
              .bufferPercent(50)
              .candidates(
                  List.of(
                      Models.candidate("c0", "any", 0),
                      Models.candidate("c1", "any", 0),
                      Models.candidate("c2", "any", 0)))
              .rules(
                  new Rules(
                      List.of(
                          new Apart("more", Set.of("c0"), Set.of("c1", "c2"), false),
                          new Apart("fewer", Set.of("c1"), Set.of("c1"), false)),
                      List.of()))
              .weights(new Weights(0, 0, MONOTONY, ACROSS, 0, 0, IDLE))
              .build());

  private final BitSet held = new BitSet();
  private final Sharing sharing;
  private final Labels labels = new Labels();

  DominanceTest() {
    held.set(0, 2);
    sharing = Sharing.of(model, List.of(held), List.of(1));
  }

  /** A label two of whose six cells are exercises, after a format 0, at a price. */
  private int label(long cost) {
    return label(cost, 2, 1);
  }

  private int label(long cost, int time, int stretch) {
    int label =
        labels.add(
            0, 0, 1, Labels.state(0, 0, 1, 1, time, stretch), model.pack(cost), model.pack(cost));
    labels.products[label] = 0b11;
    labels.visited[label] = 0b01;
    labels.shared[label] = sharing.start();
    labels.formats[label] = 0;
    labels.wakes[label] = 0;
    labels.exercised[label] = 2;
    return label;
  }

  @Test
  void of_two_alike_the_first_is_left() {
    int one = label(5);
    int other = label(5);
    assertThat(left(one, other)).containsExactly(one);
    assertThat(left(other, one)).containsExactly(other);
  }

  @Test
  void the_cheaper_is_left() {
    leavesTheFirst(label(4), label(5));
  }

  @Test
  void other_states_are_other_matters() {
    leavesBoth(label(4, 2, 1), label(5, 3, 1));
    leavesBoth(label(4, 2, 1), label(5, 2, 2));
  }

  @Test
  void a_product_more_may_be_worth_its_price() {
    int poorer = label(4);
    labels.products[poorer] = 0b10;
    leavesBoth(poorer, label(5));
    int richer = label(4);
    labels.products[richer] = 0b111;
    leavesTheFirst(richer, label(5));
  }

  @Test
  void an_exercise_still_free_may_be_worth_its_price() {
    int busier = label(4);
    labels.visited[busier] = 0b11;
    leavesBoth(busier, label(5));
    int freer = label(4);
    labels.visited[freer] = 0;
    leavesTheFirst(freer, label(5));
  }

  @Test
  void an_exercise_less_shared_may_be_worth_its_price() {
    int sharer = label(4);
    labels.shared[sharer] = sharing.after(sharing.start(), 1);
    leavesBoth(sharer, label(5));
    int later = label(5);
    labels.shared[later] = sharing.after(sharing.start(), 1);
    leavesTheFirst(label(4), later);
  }

  @Test
  void a_neighbour_still_free_may_be_worth_its_price() {
    int barring = label(3);
    labels.wakes[barring] = model.neighbours.wake(0);
    int barringLess = label(4);
    labels.wakes[barringLess] = model.neighbours.wake(1);
    leavesBoth(barring, barringLess);
    leavesBoth(barring, label(5));
    int barringMore = label(5);
    labels.wakes[barringMore] = model.neighbours.wake(0);
    leavesTheFirst(barringLess, barringMore);
  }

  /** The price of monotony is the most that the better last format may be worth. */
  @Test
  void another_last_format_is_worth_monotony_at_most() {
    int other = label(1);
    labels.formats[other] = 1;
    leavesBoth(other, label(MONOTONY));
    leavesTheFirst(other, label(1 + MONOTONY));
    int another = label(1, 2, 0);
    labels.formats[another] = 1;
    leavesBoth(another, label(ACROSS, 2, 0));
    leavesTheFirst(another, label(1 + ACROSS, 2, 0));
  }

  /** Two cells less of exercises make the buffer a cell shorter, and idle is ten minutes more. */
  @Test
  void a_shorter_buffer_may_leave_time_idle() {
    int shorter = label(1);
    labels.exercised[shorter] = 0;
    leavesBoth(shorter, label(10 * IDLE));
    leavesTheFirst(shorter, label(1 + 10 * IDLE));
  }

  @Test
  void a_longer_buffer_may_not_fit() {
    int longer = label(1);
    labels.exercised[longer] = 4;
    leavesBoth(longer, label(1000));
  }

  /** Many labels of many states: nothing is lost in the table, and nothing left in vain. */
  @Test
  void of_many_those_are_left_that_no_other_dominates() {
    SplittableRandom random = new SplittableRandom(3);
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < 4000; i++) {
      int label = label(random.nextInt(100), 1 + random.nextInt(400), random.nextInt(4));
      labels.prices[label] += i; // no two alike, as ties see to it
      labels.products[label] = random.nextInt(4);
      labels.visited[label] = random.nextInt(2);
      labels.formats[label] = (short) random.nextInt(2);
      all.add(label);
    }
    Dominance dominance = new Dominance(model, labels, sharing);
    List<Integer> left = new ArrayList<>(all);
    left.removeIf(label -> !dominance.keep(label));
    left.removeIf(label -> labels.dropped[label]);

    assertThat(left).hasSizeBetween(400, 3500);
    for (int label : all) {
      List<Integer> better =
          left.stream()
              .filter(other -> other != label && labels.states[other] == labels.states[label])
              .filter(other -> left(other, label).equals(List.of(other)))
              .toList();
      assertThat(better.isEmpty()).describedAs("label %d", label).isEqualTo(left.contains(label));
    }
  }

  @Test
  void nothing_is_remembered_once_cleared() {
    Dominance dominance = new Dominance(model, labels, sharing);
    assertThat(dominance.keep(label(4))).isTrue();
    dominance.clear();
    assertThat(dominance.keep(label(5))).isTrue();
  }

  private void leavesTheFirst(int one, int other) {
    assertThat(left(one, other)).containsExactly(one);
    assertThat(left(other, one)).containsExactly(one);
  }

  private void leavesBoth(int one, int other) {
    assertThat(left(one, other)).containsExactly(one, other);
    assertThat(left(other, one)).containsExactly(other, one);
  }

  /** Which of two are left when they come in that order. */
  private List<Integer> left(int one, int other) {
    boolean[] dropped = {labels.dropped[one], labels.dropped[other]};
    labels.dropped[one] = false;
    labels.dropped[other] = false;
    Dominance dominance = new Dominance(model, labels, sharing);
    List<Integer> left = new ArrayList<>(List.of(one, other));
    left.removeIf(label -> !dominance.keep(label));
    left.removeIf(label -> labels.dropped[label]);
    labels.dropped[one] = dropped[0];
    labels.dropped[other] = dropped[1];
    return left;
  }
}
