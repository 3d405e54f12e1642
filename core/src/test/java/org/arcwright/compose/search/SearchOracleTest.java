package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.CpSat;
import org.arcwright.compose.oracle.Enumeration;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against enumeration, a general solver (OR-Tools CP-SAT) and the checker. */
class SearchOracleTest {
  private static final double SECONDS = 10;

  @Test
  void equalsEnumerationOnTinyInstances() {
    equalsEnumeration(Instances::tiny, LongStream.range(0, 500));
  }

  @Test
  void equalsEnumerationOnTinyInstancesWithRules() {
    equalsEnumeration(SearchOracleTest::tinyRuled, LongStream.range(0, 500));
  }

  /** Seeds that a search got wrong once. */
  @ParameterizedTest
  @ValueSource(longs = {263, 555, 1184, 1688, 1966})
  void equalsEnumerationWhereItOnceDidNot(long seed) {
    equalsEnumeration(Instances::tiny, LongStream.of(seed));
  }

  @Test
  @Tag("slow")
  void equalsEnumerationOnManyTinyInstances() {
    equalsEnumeration(Instances::tiny, LongStream.range(500, 10_000));
  }

  @Test
  @Tag("slow")
  void equalsEnumerationOnManyTinyInstancesWithRules() {
    equalsEnumeration(SearchOracleTest::tinyRuled, LongStream.range(500, 10_000));
  }

  /** Seeds that the general solver proves in less than a second. */
  @Test
  void equalsTheGeneralSolverOnMiddlingInstances() {
    equalsGeneralSolver(
        Instances::middling, LongStream.of(1, 2, 6, 7, 9, 13, 17, 19, 24, 25, 30, 37, 42, 46, 58));
  }

  @Test
  void equalsTheGeneralSolverOnMiddlingInstancesWithRules() {
    equalsGeneralSolver(
        SearchOracleTest::middlingRuled, LongStream.of(1, 2, 6, 7, 9, 13, 17, 19, 24, 25, 30, 37));
  }

  @Test
  @Tag("slow")
  void equalsTheGeneralSolverOnManyMiddlingInstancesWithRules() {
    equalsGeneralSolver(SearchOracleTest::middlingRuled, LongStream.range(60, 160));
  }

  @Test
  @Tag("slow")
  void equalsTheGeneralSolverOnManyMiddlingInstances() {
    equalsGeneralSolver(Instances::middling, LongStream.range(60, 160));
  }

  /** With exercises that must appear and pins, of which some can be met and some cannot. */
  @Test
  @Tag("slow")
  void equalsTheGeneralSolverOnManyDemandingInstances() {
    equalsGeneralSolver(Instances::demanding, LongStream.range(0, 60));
  }

  @ParameterizedTest
  @CsvSource({"60, 90", "60, 180", "200, 180", "1000, 240"})
  void likelyWorkshopsPassTheChecker(int candidates, int cap) {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 3; seed++) {
      for (Instance instance :
          new Instance[] {
            Instances.of(candidates, cap, seed), Instances.wished(candidates, cap, seed)
          }) {
        Solution solution = Search.solve(instance, Limit.NONE);
        softly.assertThat(solution.status()).isEqualTo(Status.OPTIMAL);
        passesTheChecker(softly, seed, instance, solution);
      }
    }
    softly.assertAll();
  }

  private static Instance tinyRuled(long seed) {
    return Instances.ruled(Instances.tiny(seed), seed);
  }

  private static Instance middlingRuled(long seed) {
    return Instances.ruled(Instances.middling(seed), seed);
  }

  private static void equalsEnumeration(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    seeds.forEach(
        seed -> {
          Instance instance = instances.apply(seed);
          Optional<Best> best = Enumeration.solve(instance);
          Solution solution = Search.solve(instance, Limit.NONE);
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
          passesTheChecker(softly, seed, instance, solution);
        });
    softly.assertAll();
  }

  private static void equalsGeneralSolver(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    long proven =
        seeds
            .filter(
                seed -> {
                  Instance instance = instances.apply(seed);
                  Solution solution = Search.solve(instance, Limit.NONE);
                  passesTheChecker(softly, seed, instance, solution);
                  return agrees(softly, seed, solution, CpSat.solve(instance, SECONDS));
                })
            .count();
    softly.assertAll();
    assertThat(proven).describedAs("instances that the general solver decided").isPositive();
  }

  /** Whether the general solver came to an end; if not, the cost has to lie in its bounds. */
  private static boolean agrees(
      SoftAssertions softly, long seed, Solution solution, CpSat.Answer answer) {
    switch (answer.status()) {
      case OPTIMAL -> {
        softly.assertThat(solution.status()).describedAs("%d", seed).isEqualTo(Status.OPTIMAL);
        softly.assertThat(solution.cost()).describedAs("%d", seed).isEqualTo(answer.cost());
        return true;
      }
      case INFEASIBLE -> {
        softly.assertThat(solution.status()).describedAs("%d", seed).isEqualTo(Status.INFEASIBLE);
        return true;
      }
      case FEASIBLE ->
          softly
              .assertThat(solution.cost())
              .describedAs("%d", seed)
              .isBetween(answer.bound(), answer.cost());
      default -> {}
    }
    return false;
  }

  private static void passesTheChecker(
      SoftAssertions softly, long seed, Instance instance, Solution solution) {
    if (solution.items().isEmpty()) {
      return;
    }
    Verdict verdict = Checker.check(instance, solution.items());
    softly.assertThat(verdict.findings()).describedAs("findings, seed %d", seed).isEmpty();
    softly
        .assertThat(verdict.cost().total())
        .describedAs("checked cost, seed %d", seed)
        .isEqualTo(solution.cost());
    softly
        .assertThat(verdict.tie())
        .describedAs("checked tie, seed %d", seed)
        .isEqualTo(solution.tie());
  }
}
