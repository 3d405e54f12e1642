package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.BriefReading;
import org.arcwright.format.Problem;
import org.arcwright.format.ProblemsFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells what is wrong with briefs, and what is odd. */
@Command(
    name = "check",
    description = {
      "Tells every problem in briefs at once, each with its line, and what would be right. Hints"
          + " tell what is allowed but odd.",
      ""
    },
    footer = {"", "Exit code 1 if there are problems, 0 if there are none; hints do not count."},
    sortOptions = false)
final class BriefCheckCommand implements Callable<Integer> {
  @Parameters(index = "0..*", arity = "1..*", paramLabel = "BRIEF", description = "briefs to check")
  private List<Path> briefs = new ArrayList<>();

  @Mixin private FormOption form = new FormOption();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  BriefCheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(List.of(), terminal).catalog();
    List<Problem> problems = new ArrayList<>();
    List<Problem> hints = new ArrayList<>();
    for (Path file : briefs) {
      BriefReading reading = BriefFormat.check(file, catalog);
      problems.addAll(reading.problems());
      hints.addAll(reading.hints());
    }
    if (form.isJson()) {
      terminal.out().print(ProblemsFormat.write(problems, hints));
    } else {
      tell(problems, hints);
    }
    return problems.isEmpty() ? Exit.DONE : Exit.NEGATIVE;
  }

  private void tell(List<Problem> problems, List<Problem> hints) {
    problems.forEach(problem -> terminal.out().println(problem.text()));
    hints(terminal, hints);
    terminal
        .out()
        .println(
            count(briefs.size(), "brief")
                + ", "
                + (problems.isEmpty() ? "no problems" : count(problems.size(), "problem"))
                + (hints.isEmpty() ? "" : ", " + count(hints.size(), "hint"))
                + ".");
  }

  static void hints(Terminal terminal, List<Problem> hints) {
    for (Problem hint : hints) {
      terminal
          .out()
          .println(
              hint.place() + ": hint: " + hint.what() + ", " + hint.value() + ": " + hint.remedy());
    }
  }

  private static String count(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
