package org.arcwright.compose.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpSolverStatus;
import java.util.Optional;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two oracles written apart agree: enumeration with the checker, and a general solver's model. */
class CpSatTest {
  private static final int SECONDS = 60;

  @ParameterizedTest
  @ValueSource(longs = {0, 1000, 2000})
  void agrees_with_enumeration(long first) {
    int feasible = 0;
    for (long seed = first; seed < first + 20; seed++) {
      Instance instance = Instances.tiny(seed);
      Optional<Best> best = Enumeration.solve(instance);
      CpSat.Answer answer = CpSat.solve(instance, SECONDS);
      assertThat(answer.status())
          .describedAs("seed %d", seed)
          .isEqualTo(best.isPresent() ? CpSolverStatus.OPTIMAL : CpSolverStatus.INFEASIBLE);
      if (best.isPresent()) {
        feasible++;
        assertThat(answer.cost()).describedAs("seed %d", seed).isEqualTo(best.get().cost());
        assertThat(answer.bound()).isEqualTo(answer.cost());
        Verdict verdict = Checker.check(instance, answer.items());
        assertThat(verdict.findings()).describedAs("seed %d", seed).isEmpty();
        assertThat(verdict.cost().total()).isEqualTo(answer.cost());
        assertThat(CpSat.leastTie(instance, answer.cost(), SECONDS).items())
            .describedAs("seed %d", seed)
            .isEqualTo(best.get().items());
      }
    }
    assertThat(feasible).isGreaterThan(4);
  }
}
