package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The order in which labels are looked at. */
class QueueTest {
  private final Labels labels = new Labels();
  private final Queue queue = new Queue(labels);

  @Test
  void the_least_estimate_comes_first_and_of_equal_ones_the_latest() {
    SplittableRandom random = new SplittableRandom(1);
    List<Integer> expected = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      int label = labels.add(-1, Labels.START, 0, 0, 0, random.nextInt(100));
      expected.add(label);
      queue.add(label);
    }
    expected.sort(
        Comparator.comparingLong((Integer label) -> labels.estimates[label])
            .thenComparing(Comparator.reverseOrder()));
    assertThat(drained()).isEqualTo(expected);
  }

  @Test
  void takes_more_while_it_is_emptied() {
    SplittableRandom random = new SplittableRandom(2);
    List<Integer> inside = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      if (inside.isEmpty() || random.nextInt(3) > 0) {
        int label = labels.add(-1, Labels.START, 0, 0, 0, random.nextInt(50));
        inside.add(label);
        queue.add(label);
      } else {
        int least = inside.stream().min(this::order).orElseThrow();
        assertThat(queue.peek()).isEqualTo(least);
        assertThat(queue.poll()).isEqualTo(least);
        inside.remove((Integer) least);
      }
      assertThat(queue.isEmpty()).isEqualTo(inside.isEmpty());
    }
  }

  @Test
  void is_empty_once_cleared() {
    queue.add(labels.add(-1, Labels.START, 0, 0, 0, 0));
    queue.clear();
    assertThat(queue.isEmpty()).isTrue();
  }

  private int order(int a, int b) {
    int order = Long.compare(labels.estimates[a], labels.estimates[b]);
    return order != 0 ? order : Integer.compare(b, a);
  }

  private List<Integer> drained() {
    List<Integer> drained = new ArrayList<>();
    while (!queue.isEmpty()) {
      drained.add(queue.poll());
    }
    return drained;
  }
}
