package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.Problem;
import org.arcwright.format.ShelfFormat;
import org.arcwright.shelf.CatalogCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Holds files of a catalog against good practice. */
@Command(
    name = "check",
    description = {
      "Tells every problem in exercises, goals and whole catalog folders at once, each with its"
          + " line, and what would be right.",
      ""
    },
    footer = {"", "Exit code 1 if there are problems, 0 if there are none."},
    sortOptions = false)
final class CatalogCheckCommand implements Callable<Integer> {
  @Parameters(
      index = "0..*",
      arity = "1..*",
      paramLabel = "PATH",
      description = "files and folders; they may use what the built-in catalog names")
  private List<Path> paths = new ArrayList<>();

  @Mixin private FormOption form = new FormOption();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogCheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog below = catalogs.read(List.of(), terminal).catalog();
    CatalogCheck.Report report =
        CatalogCheck.over(below, new TextLikeness(below.exercises().values())).check(paths);
    if (form.isJson()) {
      terminal.out().print(ShelfFormat.write(report.files(), report.problems(), report.replaced()));
    } else {
      tell(report);
    }
    return report.problems().isEmpty() ? Exit.DONE : Exit.NEGATIVE;
  }

  private void tell(CatalogCheck.Report report) {
    for (Problem problem : report.problems()) {
      terminal.out().println(problem.text());
    }
    if (!report.replaced().isEmpty()) {
      terminal
          .out()
          .println(
              "These take the place of what lies below: "
                  + String.join(", ", report.replaced())
                  + ".");
    }
    int problems = report.problems().size();
    terminal
        .out()
        .println(
            (report.files() == 1 ? "1 entry" : report.files() + " entries")
                + (problems == 0
                    ? ", no problems."
                    : problems == 1 ? ", 1 problem." : ", " + problems + " problems."));
  }
}
