package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.CpSat;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The search against a general solver (OR-Tools CP-SAT) on instances too large to enumerate, and
 * the checker. Where the solver has no proof in time, the cost has to lie within its bounds.
 */
class GeneralSolverOracleTest {
  private static final double SECONDS = 10;

  /** Seeds that the general solver proves in less than a second. */
  @Test
  void equals_the_general_solver_on_middling_instances() {
    equalsGeneralSolver(
        Instances::middling, LongStream.of(1, 2, 6, 7, 9, 13, 17, 19, 24, 25, 30, 37, 42, 46, 58));
  }

  @Test
  void equals_the_general_solver_on_middling_instances_with_rules() {
    equalsGeneralSolver(
        GeneralSolverOracleTest::middlingRuled,
        LongStream.of(1, 2, 6, 7, 9, 13, 17, 19, 24, 25, 30, 37));
  }

  @Test
  @Tag("slow")
  void equals_the_general_solver_on_many_middling_instances_with_rules() {
    equalsGeneralSolver(GeneralSolverOracleTest::middlingRuled, LongStream.range(60, 160));
  }

  @Test
  @Tag("slow")
  void equals_the_general_solver_on_many_middling_instances() {
    equalsGeneralSolver(Instances::middling, LongStream.range(60, 160));
  }

  /** With exercises that must appear and pins, of which some can be met and some cannot. */
  @Test
  @Tag("slow")
  void equals_the_general_solver_on_many_demanding_instances() {
    equalsGeneralSolver(Instances::demanding, LongStream.range(0, 60));
  }

  /** Hundreds that nobody looked at: wishes, pins, meals, odd bounds, rules of their own. */
  @Test
  @Tag("slow")
  void equals_the_general_solver_on_hundreds_of_unseen_instances() {
    equalsGeneralSolver(GeneralSolverOracleTest::unseen, LongStream.range(1_000, 1_400));
  }

  private static Instance middlingRuled(long seed) {
    return Instances.ruled(Instances.middling(seed), seed);
  }

  /** Demanding ones, half of them with rules. */
  private static Instance unseen(long seed) {
    Instance instance = Instances.demanding(seed);
    return seed % 2 == 0 ? instance : Instances.ruled(instance, seed);
  }

  private static void equalsGeneralSolver(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    long proven =
        seeds
            .filter(
                seed -> {
                  Instance instance = instances.apply(seed);
                  Solution solution = Search.solve(instance, Limit.NONE);
                  Passes.theChecker(softly, seed, instance, solution);
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
}
