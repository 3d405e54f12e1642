package org.arcwright.compose.search;

import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against enumeration and the checker. */
class SearchOracleTest {
  @Test
  void equals_enumeration_on_tiny_instances() {
    equalsEnumeration(Instances::tiny, LongStream.range(0, 500));
  }

  @Test
  void equals_enumeration_on_tiny_instances_with_rules() {
    equalsEnumeration(SearchOracleTest::tinyRuled, LongStream.range(0, 500));
  }

  /** Seeds that a search got wrong once. */
  @ParameterizedTest
  @ValueSource(longs = {263, 555, 1184, 1688, 1966})
  void equals_enumeration_where_it_once_did_not(long seed) {
    equalsEnumeration(Instances::tiny, LongStream.of(seed));
  }

  @Test
  @Tag("slow")
  void equals_enumeration_on_many_tiny_instances() {
    equalsEnumeration(Instances::tiny, LongStream.range(500, 10_000));
  }

  @Test
  @Tag("slow")
  void equals_enumeration_on_many_tiny_instances_with_rules() {
    equalsEnumeration(SearchOracleTest::tinyRuled, LongStream.range(500, 10_000));
  }

  @ParameterizedTest
  @CsvSource({"60, 90", "60, 180", "200, 180", "1000, 240"})
  void likely_workshops_pass_the_checker(int candidates, int cap) {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 3; seed++) {
      for (Instance instance :
          new Instance[] {
            Instances.of(candidates, cap, seed), Instances.wished(candidates, cap, seed)
          }) {
        Solution solution = Search.solve(instance, Models.AMPLE);
        softly.assertThat(solution.status()).isEqualTo(Status.OPTIMAL);
        Passes.theChecker(softly, seed, instance, solution);
      }
    }
    softly.assertAll();
  }

  private static Instance tinyRuled(long seed) {
    return Instances.ruled(Instances.tiny(seed), seed);
  }

  private static void equalsEnumeration(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    seeds.forEach(
        seed -> {
          Instance instance = instances.apply(seed);
          Optional<Best> best = Enumerated.best(instance);
          Solution solution = Search.solve(instance, Models.SOON);
          softly
              .assertThat(solution.status())
              .describedAs("status, seed %d", seed)
              .isEqualTo(best.isPresent() ? Status.OPTIMAL : Status.INFEASIBLE);
          softly
              .assertThat(solution.cost())
              .describedAs("cost, seed %d", seed)
              .isEqualTo(best.map(Best::cost).orElse(0L));
          softly
              .assertThat(solution.tie())
              .describedAs("tie, seed %d", seed)
              .isEqualTo(best.map(Best::tie).orElse(0L));
          Passes.theChecker(softly, seed, instance, solution);
        });
    softly.assertAll();
  }
}
