package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.oracle.Draft;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where prices are too large to tell apart, "nothing fits" is not to be believed. */
class PriceRangeTest {
  private static final int LARGE = 1_000_000;

  static Stream<Weights> largeWeights() {
    return Stream.of(
        new Weights(LARGE, 0, 0, 0, 0, 0, 0),
        new Weights(0, LARGE, 0, 0, 0, 0, 0),
        new Weights(0, 0, LARGE, 0, 0, 0, 0),
        new Weights(0, 0, 0, LARGE, 0, 0, 0),
        new Weights(0, 0, 0, 0, LARGE, 0, 0),
        new Weights(0, 0, 0, 0, 0, LARGE, 0),
        new Weights(0, 0, 0, 0, 0, 0, LARGE));
  }

  @ParameterizedTest
  @MethodSource("largeWeights")
  void any_large_weight_may_overflow(Weights weights) {
    assertThat(PriceRange.mayOverflow(hour(0, 0).weights(weights).build())).isTrue();
  }

  @Test
  void a_large_cost_or_length_cost_may_overflow() {
    assertThat(PriceRange.mayOverflow(hour(LARGE, 0).build())).isTrue();
    assertThat(PriceRange.mayOverflow(hour(0, LARGE).build())).isTrue();
    assertThat(PriceRange.mayOverflow(hour(LARGE / 5, LARGE / 5).build())).isTrue();
  }

  /** Each by itself is just small enough; the day has 60 minutes in 6 cells. */
  @Test
  void prices_add_up() {
    Weights weights = new Weights(9, 0, 0, 0, 0, 80_000, 0);
    assertThat(PriceRange.mayOverflow(hour(0, 0).weights(weights).build())).isFalse();
    assertThat(PriceRange.mayOverflow(hour(0, 0).weights(weights).cap(120).build())).isTrue();
  }

  @Test
  void no_price_or_a_usual_one_may_not() {
    assertThat(PriceRange.mayOverflow(hour(0, 0).build())).isFalse();
    assertThat(PriceRange.mayOverflow(hour(40, 8).build())).isFalse();
    for (long seed = 0; seed < 100; seed++) {
      assertThat(PriceRange.mayOverflow(Instances.tiny(seed))).isFalse();
    }
  }

  /** With the tie below it, a cost of so many points has no room in a number. */
  @Test
  void prices_too_large_to_add_up_are_refused_and_not_called_infeasible() {
    Instance instance = hour(100 * LARGE, 0).build();
    assertThat(Search.solve(instance.freeOfCharge(), Models.AMPLE).status())
        .isEqualTo(Status.OPTIMAL);
    assertThatThrownBy(() -> Search.solve(instance, Models.AMPLE))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("could cost too much to add up");
  }

  private static Draft hour(int cost, int lengthCost) {
    Candidate candidate =
        new Candidate(
            "only", "any", List.of(10), List.of(lengthCost), 30, "any", List.of(), List.of(), cost);
    return Models.hour(Models.phase("any", 1)).candidates(List.of(candidate));
  }
}
