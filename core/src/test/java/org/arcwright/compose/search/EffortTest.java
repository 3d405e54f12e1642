package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Instances;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How many steps searches take: the same on any machine. A rule of the search that no longer does
 * its part seldom makes an answer wrong, but mostly makes it late. The figures are what is promised
 * and leave room over what was counted, about half as much again.
 */
class EffortTest {
  @Test
  void tiny_instances_take_a_hundred_steps_or_so() {
    assertThat(steps(LongStream.range(0, 500).mapToObj(Instances::tiny).toList()))
        .isLessThan(85_000);
  }

  @Test
  void rules_make_that_hardly_more() {
    assertThat(
            steps(
                LongStream.range(0, 500)
                    .mapToObj(seed -> Instances.ruled(Instances.tiny(seed), seed))
                    .toList()))
        .isLessThan(90_000);
  }

  @Test
  void middling_ones_take_a_thousand_or_two() {
    assertThat(steps(LongStream.range(0, 60).mapToObj(Instances::middling).toList()))
        .isLessThan(125_000);
  }

  /** Each line is the sum of five workshops of a size. */
  @ParameterizedTest
  @CsvSource({"60, 90, 25_000", "60, 180, 120_000", "150, 180, 110_000", "1000, 240, 160_000"})
  void a_likely_workshop_is_proven_near_its_outline(int candidates, int cap, long most) {
    assertThat(
            steps(
                LongStream.range(0, 5)
                    .mapToObj(seed -> Instances.of(candidates, cap, seed))
                    .toList()))
        .isLessThan(most);
  }

  @ParameterizedTest
  @CsvSource({"60, 90, 25_000", "150, 180, 300_000"})
  void wishes_make_it_a_few_times_as_much(int candidates, int cap, long most) {
    assertThat(
            steps(
                LongStream.range(0, 5)
                    .mapToObj(seed -> Instances.wished(candidates, cap, seed))
                    .toList()))
        .isLessThan(most);
  }

  @ParameterizedTest
  @CsvSource({"60, 90, 75_000", "150, 180, 650_000", "60, 240, 1_500_000"})
  void five_options_take_twenty_times_as_much_as_one_or_so(int candidates, int cap, long most) {
    long steps = 0;
    for (long seed = 0; seed < 3; seed++) {
      Instance instance = Instances.of(candidates, cap, seed);
      OptionList options = OptionSearch.solve(instance, new OptionRule(5, 50, 25), Models.AMPLE);
      assertThat(options.solutions()).hasSize(5);
      steps += options.labels();
    }
    assertThat(steps).isLessThan(most);
  }

  private static long steps(Iterable<Instance> instances) {
    long steps = 0;
    for (Instance instance : instances) {
      steps += Search.solve(instance, Models.AMPLE).labels();
    }
    return steps;
  }
}
