package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The options against enumeration and the checker. */
class OptionOracleTest {
  @Test
  void equals_enumeration_on_tiny_instances() {
    equalsEnumeration(Instances::tiny, LongStream.range(0, 100));
  }

  @Test
  void equals_enumeration_on_tiny_instances_with_rules() {
    equalsEnumeration(OptionOracleTest::tinyRuled, LongStream.range(0, 100));
  }

  @Test
  @Tag("slow")
  void equals_enumeration_on_many_tiny_instances() {
    equalsEnumeration(Instances::tiny, LongStream.range(100, 2_000));
  }

  @Test
  @Tag("slow")
  void equals_enumeration_on_many_tiny_instances_with_rules() {
    equalsEnumeration(OptionOracleTest::tinyRuled, LongStream.range(100, 2_000));
  }

  @ParameterizedTest
  @CsvSource({"60, 90", "60, 180", "150, 180", "60, 240"})
  void options_of_likely_workshops_keep_the_rule(int candidates, int cap) {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 3; seed++) {
      OptionRule rule = OptionPasses.rule(seed, 5);
      Instance instance = Instances.of(candidates, cap, seed);
      OptionList options = OptionSearch.solve(instance, rule, Models.AMPLE);
      softly.assertThat(options.end()).isNotEqualTo(End.STOPPED);
      OptionPasses.theRule(softly, seed, instance, rule, options);
    }
    softly.assertAll();
  }

  @Test
  void a_limit_ends_the_search_with_the_options_proven_so_far() {
    Instance instance = Instances.of(150, 180, 4);
    OptionRule rule = new OptionRule(5, 50, 25);
    OptionList all = OptionSearch.solve(instance, rule, Models.AMPLE);
    long second = all.solutions().get(1).labels();
    OptionList some = OptionSearch.solve(instance, rule, Limit.labels(second + 2500));
    assertThat(some.end()).isEqualTo(End.STOPPED);
    assertThat(some.solutions().subList(0, 2)).isEqualTo(all.solutions().subList(0, 2));
    assertThat(some.solutions().stream().skip(2))
        .noneMatch(solution -> solution.status() == Status.OPTIMAL);
    assertThat(OptionSearch.solve(instance, rule, Limit.labels(1)).solutions())
        .extracting(Solution::status)
        .containsExactly(Status.STOPPED);
  }

  private static Instance tinyRuled(long seed) {
    return Instances.ruled(Instances.tiny(seed), seed);
  }

  private static void equalsEnumeration(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    List<End> ends = new ArrayList<>();
    seeds.forEach(
        seed -> {
          Instance instance = instances.apply(seed);
          OptionRule rule = OptionPasses.rule(seed, 4);
          OptionList options = OptionSearch.solve(instance, rule, Models.SOON);
          equalsEnumeration(softly, seed, instance, rule, options);
          OptionPasses.theRule(softly, seed, instance, rule, options);
          ends.add(options.end());
        });
    softly.assertAll();
    assertThat(ends).contains(End.ENOUGH, End.NONE_LEFT, End.TOO_DEAR);
  }

  private static void equalsEnumeration(
      SoftAssertions softly, long seed, Instance instance, OptionRule rule, OptionList options) {
    Map<Set<String>, Best> left = new HashMap<>(Enumerated.ofEachSet(instance));
    int found = 0;
    for (Solution solution : options.solutions()) {
      Optional<Best> best = Enumeration.best(left.values());
      softly
          .assertThat(solution.cost())
          .describedAs("cost of option %d, seed %d", found + 1, seed)
          .isEqualTo(best.map(Best::cost).orElse(0L));
      softly
          .assertThat(solution.tie())
          .describedAs("tie of option %d, seed %d", found + 1, seed)
          .isEqualTo(best.map(Best::tie).orElse(0L));
      if (solution.items().isEmpty()) {
        return;
      }
      Set<String> ids = OptionPasses.ids(solution.items());
      left.keySet().removeIf(other -> !OptionPasses.differs(other, ids, rule));
      found++;
    }
    Optional<Best> more = Enumeration.best(left.values());
    long ceiling = rule.ceiling(options.solutions().get(0).cost());
    switch (options.end()) {
      case ENOUGH -> softly.assertThat(found).isEqualTo(rule.count());
      case NONE_LEFT -> softly.assertThat(more).describedAs("seed %d", seed).isEmpty();
      case TOO_DEAR -> {
        softly.assertThat(more).describedAs("seed %d", seed).isPresent();
        softly.assertThat(more.map(Best::cost).orElse(0L)).isGreaterThan(ceiling);
        softly
            .assertThat(options.next().map(Solution::cost))
            .describedAs("next, seed %d", seed)
            .isEqualTo(more.map(Best::cost));
      }
      case STOPPED -> softly.fail("stopped without a limit, seed %d", seed);
    }
  }
}
