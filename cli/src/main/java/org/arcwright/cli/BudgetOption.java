package org.arcwright.cli;

import java.time.Duration;
import org.arcwright.compose.Budget;
import picocli.CommandLine.Option;

/** How long a search may take. */
final class BudgetOption {
  @Option(
      names = "--budget",
      paramLabel = "TIME",
      converter = Spans.class,
      description = "most time to search, such as 500ms, 10s or 2m; 10s if not given")
  private Duration time = Budget.USUAL.time();

  Duration time() {
    return time;
  }
}
