package org.arcwright.compose.search;

import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.assertj.core.api.SoftAssertions;

/** What every solution has to pass, whatever else is asked of it. */
final class Passes {
  private Passes() {}

  /** The checker finds nothing amiss, and the same cost and tie. */
  static void theChecker(SoftAssertions softly, long seed, Instance instance, Solution solution) {
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
