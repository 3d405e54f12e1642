package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.arcwright.compose.instance.Instance;
import org.junit.jupiter.api.Test;

/** The labels' arrays. */
class LabelsTest {
  private final Labels labels = new Labels();

  /** Each part of a state at its largest (see the limits of {@link Instance}), the others at 0. */
  @Test
  void a_state_has_room_for_the_largest_of_each_part() {
    int phase = Instance.MOST_PHASES - 1;
    int cells = Instance.MOST_CELLS;
    int stretch = Instance.MOST_BITS;
    int[][] states = {
      {phase, 0, 0, 0, 0, 0},
      {0, 255, 0, 0, 0, 0},
      {0, 0, cells, 0, 0, 0},
      {0, 0, 0, cells, 0, 0},
      {0, 0, 0, 0, cells, 0},
      {0, 0, 0, 0, 0, stretch},
      {phase, 255, cells, cells, cells, stretch}
    };
    for (int[] state : states) {
      int label = add(Labels.state(state[0], state[1], state[2], state[3], state[4], state[5]));
      assertThat(labels.phase(label)).isEqualTo(state[0]);
      assertThat(labels.meals(label)).isEqualTo(state[1]);
      assertThat(labels.count(label)).isEqualTo(state[2]);
      assertThat(labels.cells(label)).isEqualTo(state[3]);
      assertThat(labels.time(label)).isEqualTo(state[4]);
      assertThat(labels.stretch(label)).isEqualTo(state[5]);
    }
  }

  @Test
  void grow_without_forgetting_anything() {
    for (int i = 0; i < 1000; i++) {
      int label = labels.add(i - 1, i, i, i, i, i);
      labels.products[label] = i;
      labels.visited[label] = i;
      labels.shared[label] = i;
      labels.wakes[label] = i;
      labels.formats[label] = (short) i;
      labels.exercised[label] = (short) i;
      labels.dropped[label] = i % 2 == 0;
    }
    assertThat(labels.size()).isEqualTo(1000);
    for (int i = 0; i < 1000; i++) {
      assertThat(
              new long[] {
                labels.parents[i] + 1,
                labels.actions[i],
                labels.lengths[i],
                labels.states[i],
                labels.prices[i],
                labels.estimates[i],
                labels.products[i],
                labels.visited[i],
                labels.shared[i],
                labels.wakes[i],
                labels.formats[i],
                labels.exercised[i]
              })
          .containsOnly(i);
      assertThat(labels.dropped[i]).isEqualTo(i % 2 == 0);
    }
  }

  @Test
  void a_new_label_is_not_dropped_though_one_in_its_place_was() {
    labels.dropped[add(1)] = true;
    labels.removeLast();
    assertThat(labels.dropped[add(2)]).isFalse();
    assertThat(labels.size()).isEqualTo(1);
  }

  @Test
  void a_path_holds_what_stands_on_it_and_nothing_else() {
    int start = labels.add(-1, Labels.START, 0, 0, 0, 0);
    int first = labels.add(start, 7, 1, 0, 0, 0);
    int aside = labels.add(start, 8, 1, 0, 0, 0);
    int second = labels.add(first, 9, 1, 0, 0, 0);
    assertThat(labels.onPath(second, 7)).isTrue();
    assertThat(labels.onPath(second, 9)).isTrue();
    assertThat(labels.onPath(second, 8)).isFalse();
    assertThat(labels.onPath(aside, 8)).isTrue();
    assertThat(labels.onPath(start, 7)).isFalse();
  }

  private int add(long state) {
    return labels.add(-1, Labels.START, 0, state, 0, 0);
  }
}
