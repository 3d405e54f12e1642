package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Instances;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What wishes cost the search. Steps are the same on every machine. */
class WishesTest {
  /** Three includes that meet in one phase: a bound that leaves one of them out is far too low. */
  @ParameterizedTest
  @ValueSource(longs = {30, 53})
  void three_in_one_phase_take_no_more_than_twenty_times_the_steps(long seed) {
    long plain = steps(Instances.of(1000, 180, seed));
    assertThat(steps(Instances.wished(1000, 180, seed))).isLessThan(20 * plain);
  }

  @ParameterizedTest
  @ValueSource(ints = {150, 1000})
  void three_and_a_pin_mostly_take_no_more_than_five_times_the_steps(int candidates) {
    long few =
        LongStream.range(0, 20)
            .filter(
                seed ->
                    steps(Instances.wished(candidates, 180, seed))
                        <= 5 * steps(Instances.of(candidates, 180, seed)))
            .count();
    assertThat(few).isGreaterThan(10);
  }

  private static long steps(Instance instance) {
    return Search.solve(instance, Limit.NONE).labels();
  }
}
