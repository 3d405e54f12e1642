package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the search is asked whether to stop, and how it pauses. */
class WorkTest {
  private static final int MANY = 100_000;

  private final List<Long> asked = new ArrayList<>();

  /** A small search ends at a small limit, and a large one within a blink of a large limit. */
  @Test
  void asks_often_at_first_and_never_more_than_a_few_thousand_steps_apart() {
    Work work = new Work(this::never);
    step(work, MANY);
    assertThat(asked).startsWith(1L);
    for (int i = 1; i < asked.size(); i++) {
      assertThat(asked.get(i) - asked.get(i - 1)).isBetween(1L, 1 + asked.get(i - 1));
      assertThat(asked.get(i) - asked.get(i - 1)).isLessThanOrEqualTo(4096);
    }
  }

  /** To ask may mean to read a clock. */
  @Test
  void asks_seldom_enough_to_cost_nothing() {
    step(new Work(this::never), MANY);
    assertThat(asked).hasSizeLessThan(MANY / 500);
  }

  @Test
  void counts_every_step() {
    Work work = new Work(Limit.NONE);
    work.add(3);
    work.add(4000);
    work.add(2);
    assertThat(work.done()).isEqualTo(4005);
  }

  @Test
  void stops_once_the_limit_says_so() {
    Work work = new Work(Limit.labels(7));
    assertThatThrownBy(() -> step(work, MANY)).isInstanceOf(Work.Stopped.class);
    assertThat(work.done()).isBetween(7L, 14L);
    assertThatThrownBy(work::ask).isInstanceOf(Work.Stopped.class);
  }

  @Test
  void a_limit_of_labels_is_reached_with_the_last_of_them() {
    assertThat(Limit.labels(7).reached(6)).isFalse();
    assertThat(Limit.labels(7).reached(7)).isTrue();
    assertThat(Limit.labels(7).reached(8)).isTrue();
  }

  @Test
  void pauses_after_the_allowance_to_the_step_and_then_goes_on() {
    Work work = new Work(Limit.NONE);
    step(work, 5000);
    work.allow(10);
    assertThatThrownBy(() -> step(work, MANY)).isInstanceOf(Work.Paused.class);
    assertThat(work.done()).isEqualTo(5010);
    step(work, MANY);
    assertThat(work.done()).isEqualTo(5010 + MANY);
  }

  @Test
  void an_allowance_taken_back_does_not_pause() {
    Work work = new Work(Limit.NONE);
    step(work, 5000);
    work.allow(10);
    work.allow(Long.MAX_VALUE);
    step(work, MANY);
    assertThat(work.done()).isEqualTo(5000 + MANY);
  }

  @Test
  void the_largest_allowance_of_all_is_none_to_worry_about() {
    Work work = new Work(Limit.NONE);
    step(work, 5000);
    work.allow(Long.MAX_VALUE - 1);
    step(work, MANY);
    assertThat(work.done()).isEqualTo(5000 + MANY);
  }

  @Test
  void the_limit_comes_before_a_pause() {
    Work work = new Work(labels -> labels >= 10);
    work.allow(10);
    assertThatThrownBy(() -> step(work, MANY)).isInstanceOf(Work.Stopped.class);
  }

  private boolean never(long labels) {
    asked.add(labels);
    return false;
  }

  private static void step(Work work, int steps) {
    for (int i = 0; i < steps; i++) {
      work.add(1);
    }
  }
}
