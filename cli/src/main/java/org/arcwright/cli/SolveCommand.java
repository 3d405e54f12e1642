package org.arcwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Budget;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.arcwright.format.InstanceFormat;
import org.arcwright.format.SolutionFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Solves a raw instance of the composition problem. */
@Command(
    name = "solve",
    description = {
      "Solves an instance of the composition problem, as compose --instance writes it, and prints"
          + " the solution as JSON.",
      ""
    },
    sortOptions = false)
final class SolveCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "INSTANCE", description = "the instance, in JSON")
  private Path file = Path.of("");

  @Mixin private BudgetOption budget = new BudgetOption();

  private final Terminal terminal;

  SolveCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Instance instance = InstanceFormat.read(file);
    Solution solution = solve(instance);
    terminal.out().print(SolutionFormat.write(solution));
    return solution.items().isEmpty() ? Exit.NEGATIVE : Exit.DONE;
  }

  private Solution solve(Instance instance) {
    Duration time = budget.time();
    long begin = System.nanoTime();
    Limit limit =
        labels -> labels >= Budget.USUAL.labels() || System.nanoTime() - begin >= time.toNanos();
    try {
      return Progress.during(terminal, time, () -> Search.solve(instance, limit));
    } catch (InvalidValueException e) {
      throw new Refusal(file + ": " + e.getMessage(), e);
    }
  }
}
