package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which ways on the scout tries first. */
class WaysTest {
  private final Ways ways = new Ways();

  @Test
  void the_three_best_are_kept_the_best_first() {
    List.of(50.0, 20.0, 40.0, 30.0, 10.0).forEach(score -> ways.add(score, at(score)));

    assertThat(IntStream.range(0, ways.size()).mapToObj(ways::place))
        .containsExactly(at(10), at(20), at(30));
  }

  @Test
  void of_equals_the_first_stays_first() {
    ways.add(10, at(1));
    ways.add(10, at(2));

    assertThat(ways.place(0)).isEqualTo(at(1));
    assertThat(ways.place(1)).isEqualTo(at(2));
  }

  @Test
  void until_there_are_three_any_is_wanted_and_then_only_a_better_one() {
    ways.add(10, at(1));
    ways.add(20, at(2));
    assertThat(ways.wants(1000)).isTrue();
    ways.add(30, at(3));

    assertThat(ways.wants(29)).isTrue();
    assertThat(ways.wants(30)).isFalse();
    assertThat(ways.wants(31)).isFalse();
  }

  @Test
  void there_is_none_that_nobody_added() {
    ways.add(10, at(1));

    assertThat(ways.size()).isEqualTo(1);
    assertThatThrownBy(() -> ways.place(1)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  /** However much it costs or saves. */
  @Test
  void what_is_wished_comes_first_then_what_is_due_then_what_helps_then_the_next_phase() {
    int helps = Ways.rank(-1);
    int costs = Ways.rank(0);
    long much = 1_000_000_000;
    assertThat(
            List.of(
                Ways.score(Ways.WISHED, false, much, 1),
                Ways.score(Ways.DUE, false, -much, 1),
                Ways.score(helps, false, -much, 1),
                Ways.score(Ways.WISHED, true, much, 1),
                Ways.score(Ways.DUE, true, -much, 1),
                Ways.score(costs, true, -much, 1),
                Ways.score(costs, false, 0, 1)))
        .isSorted();
    assertThat(Ways.score(helps, true, 5, 1)).isEqualTo(Ways.score(costs, true, 5, 1));
    assertThat(helps).isNotEqualTo(costs);
  }

  @Test
  void alike_in_rank_the_price_of_a_cell_decides() {
    assertThat(Ways.score(Ways.DUE, false, 30, 3)).isLessThan(Ways.score(Ways.DUE, false, 22, 2));
  }

  /** To go on within a phase at a loss is worse than to end; all else is better. */
  @Test
  void to_end_is_better_than_what_only_costs() {
    ways.add(Ways.score(Ways.rank(-1), true, 9, 1), at(1));
    ways.add(Ways.score(Ways.rank(0), false, 0, 1), at(2));

    assertThat(ways.improves(0)).isTrue();
    assertThat(ways.improves(1)).isFalse();
  }

  private static Place at(double number) {
    return new Place(0, 0, 0, 0, 0, 0, 0, 0, 0, (int) number, 0, 0, Place.START);
  }
}
