package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.CpSat;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The options against a general solver (OR-Tools CP-SAT) on instances too large to enumerate. */
class OptionGeneralSolverOracleTest {
  private static final double SECONDS = 10;

  /** Seeds that the general solver proves in less than a second. */
  @Test
  void equals_the_general_solver_on_middling_instances() {
    equalsGeneralSolver(Instances::middling, LongStream.of(1, 2, 6, 7, 9, 13));
  }

  @Test
  @Tag("slow")
  void equals_the_general_solver_on_many_middling_instances() {
    equalsGeneralSolver(Instances::middling, LongStream.range(60, 120));
  }

  @Test
  @Tag("slow")
  void equals_the_general_solver_on_many_middling_instances_with_rules() {
    equalsGeneralSolver(
        seed -> Instances.ruled(Instances.middling(seed), seed), LongStream.range(60, 120));
  }

  private static void equalsGeneralSolver(LongFunction<Instance> instances, LongStream seeds) {
    SoftAssertions softly = new SoftAssertions();
    List<CpSolverStatus> decided = new ArrayList<>();
    seeds.forEach(
        seed -> {
          Instance instance = instances.apply(seed);
          OptionRule rule = OptionPasses.rule(seed, 4);
          OptionList options = OptionSearch.solve(instance, rule, Limit.NONE);
          OptionPasses.theRule(softly, seed, instance, rule, options);
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
            most.add(rule.mostShared(OptionPasses.ids(solution.items()).size()));
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
}
