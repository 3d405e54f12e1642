package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.CpSat;
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

/** OptionList against enumeration, a general solver (OR-Tools CP-SAT) and the checker. */
class OptionOracleTest {
  private static final double SECONDS = 10;

  @Test
  void equalsEnumerationOnTinyInstances() {
    equalsEnumeration(Instances::tiny, LongStream.range(0, 100));
  }

  @Test
  void equalsEnumerationOnTinyInstancesWithRules() {
    equalsEnumeration(OptionOracleTest::tinyRuled, LongStream.range(0, 100));
  }

  @Test
  @Tag("slow")
  void equalsEnumerationOnManyTinyInstances() {
    equalsEnumeration(Instances::tiny, LongStream.range(100, 2_000));
  }

  @Test
  @Tag("slow")
  void equalsEnumerationOnManyTinyInstancesWithRules() {
    equalsEnumeration(OptionOracleTest::tinyRuled, LongStream.range(100, 2_000));
  }

  /** Seeds that the general solver proves in less than a second. */
  @Test
  void equalsTheGeneralSolverOnMiddlingInstances() {
    equalsGeneralSolver(Instances::middling, LongStream.of(1, 2, 6, 7, 9, 13));
  }

  @Test
  @Tag("slow")
  void equalsTheGeneralSolverOnManyMiddlingInstances() {
    equalsGeneralSolver(Instances::middling, LongStream.range(60, 120));
  }

  @Test
  @Tag("slow")
  void equalsTheGeneralSolverOnManyMiddlingInstancesWithRules() {
    equalsGeneralSolver(
        seed -> Instances.ruled(Instances.middling(seed), seed), LongStream.range(60, 120));
  }

  @ParameterizedTest
  @CsvSource({"60, 90", "60, 180", "150, 180", "60, 240"})
  void optionsOfLikelyWorkshopsKeepTheRule(int candidates, int cap) {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 3; seed++) {
      OptionRule rule = rule(seed, 5);
      Instance instance = Instances.of(candidates, cap, seed);
      OptionList options = OptionSearch.solve(instance, rule, Limit.NONE);
      softly.assertThat(options.end()).isNotEqualTo(End.STOPPED);
      keepsTheRule(softly, seed, instance, rule, options);
    }
    softly.assertAll();
  }

  @Test
  void theFirstOptionIsTheBest() {
    Instance instance = Instances.of(60, 120, 4);
    OptionList options = OptionSearch.solve(instance, new OptionRule(1, 50, 25), Limit.NONE);
    assertThat(options.end()).isEqualTo(End.ENOUGH);
    assertThat(options.solutions().get(0).items())
        .isEqualTo(Search.solve(instance, Limit.NONE).items());
  }

  @Test
  void aLimitEndsTheSearchWithTheOptionsProvenSoFar() {
    Instance instance = Instances.of(150, 180, 4);
    OptionRule rule = new OptionRule(5, 50, 25);
    OptionList all = OptionSearch.solve(instance, rule, Limit.NONE);
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

  private static OptionRule rule(long seed, int count) {
    int[] shares = {50, 0, 30, 67, 99};
    int[] within = {25, 100, 5, 1000};
    return new OptionRule(count, shares[(int) (seed % 5)], within[(int) (seed % 4)]);
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
          OptionRule rule = rule(seed, 4);
          OptionList options = OptionSearch.solve(instance, rule, Limit.NONE);
          equalsEnumeration(softly, seed, instance, rule, options);
          keepsTheRule(softly, seed, instance, rule, options);
          ends.add(options.end());
        });
    softly.assertAll();
    assertThat(ends).contains(End.ENOUGH, End.NONE_LEFT, End.TOO_DEAR);
  }

  private static void equalsEnumeration(
      SoftAssertions softly, long seed, Instance instance, OptionRule rule, OptionList options) {
    List<List<Item>> earlier = new ArrayList<>();
    for (Solution solution : options.solutions()) {
      Optional<Best> best = Enumeration.solve(instance, items -> differs(items, earlier, rule));
      softly
          .assertThat(solution.cost())
          .describedAs("cost of option %d, seed %d", earlier.size() + 1, seed)
          .isEqualTo(best.map(Best::cost).orElse(0L));
      softly
          .assertThat(solution.tie())
          .describedAs("tie of option %d, seed %d", earlier.size() + 1, seed)
          .isEqualTo(best.map(Best::tie).orElse(0L));
      if (solution.items().isEmpty()) {
        return;
      }
      earlier.add(solution.items());
    }
    Optional<Best> more = Enumeration.solve(instance, items -> differs(items, earlier, rule));
    long ceiling = rule.ceiling(options.solutions().get(0).cost());
    switch (options.end()) {
      case ENOUGH -> softly.assertThat(earlier).hasSize(rule.count());
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

  private static void equalsGeneralSolver(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    List<CpSolverStatus> decided = new ArrayList<>();
    seeds.forEach(
        seed -> {
          Instance instance = instances.apply(seed);
          OptionRule rule = rule(seed, 4);
          OptionList options = OptionSearch.solve(instance, rule, Limit.NONE);
          keepsTheRule(softly, seed, instance, rule, options);
          List<List<Item>> earlier = new ArrayList<>();
          List<Integer> most = new ArrayList<>();
          for (Solution solution : options.solutions()) {
            CpSat.Answer answer = CpSat.option(instance, earlier, most, SECONDS);
            if (answer.status() == CpSolverStatus.OPTIMAL) {
              softly.assertThat(solution.cost()).describedAs("%d", seed).isEqualTo(answer.cost());
              decided.add(answer.status());
            } else if (answer.status() == CpSolverStatus.INFEASIBLE) {
              softly.assertThat(solution.status()).isEqualTo(Status.INFEASIBLE);
            }
            earlier.add(solution.items());
            most.add(rule.mostShared(ids(solution.items()).size()));
          }
          if (options.end() == End.NONE_LEFT) {
            softly
                .assertThat(CpSat.option(instance, earlier, most, SECONDS).found())
                .describedAs("one more, seed %d", seed)
                .isFalse();
          }
        });
    softly.assertAll();
    assertThat(decided).describedAs("options that the general solver proved").isNotEmpty();
  }

  private static void keepsTheRule(
      SoftAssertions softly, long seed, Instance instance, OptionRule rule, OptionList options) {
    List<List<Item>> earlier = new ArrayList<>();
    long before = 0;
    long ceiling = rule.ceiling(options.solutions().get(0).cost());
    for (Solution solution : options.solutions()) {
      if (!solution.items().isEmpty()) {
        softly.assertThat(Checker.check(instance, solution.items()).feasible()).isTrue();
        softly
            .assertThat(differs(solution.items(), earlier, rule))
            .describedAs("shares little enough, seed %d", seed)
            .isTrue();
        softly.assertThat(solution.cost()).isBetween(before, ceiling);
        earlier.add(solution.items());
        before = solution.cost();
      }
    }
  }

  private static boolean differs(List<Item> items, List<List<Item>> earlier, OptionRule rule) {
    Set<String> used = ids(items);
    for (List<Item> other : earlier) {
      Set<String> shared = ids(other);
      int most = shared.size() * rule.share() / 100;
      shared.retainAll(used);
      if (shared.size() > most) {
        return false;
      }
    }
    return true;
  }

  private static Set<String> ids(List<Item> items) {
    return items.stream()
        .filter(Item.Activity.class::isInstance)
        .map(item -> ((Item.Activity) item).id())
        .collect(Collectors.toSet());
  }
}
