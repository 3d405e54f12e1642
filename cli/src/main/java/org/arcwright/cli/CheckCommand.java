package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Review;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Holds an agenda against a brief. */
@Command(
    name = "check",
    description = {
      "Says what an agenda breaks of its brief, whether composed here or written by hand.",
      ""
    },
    sortOptions = false)
final class CheckCommand implements Callable<Integer> {
  @Mixin private AgendaInput input = new AgendaInput();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(more, terminal).catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Brief brief = read.demandBrief();
    Agenda agenda = read.agenda();
    Review review = read.asking(() -> Composer.of(catalog).check(agenda, brief));
    if (review.fits()) {
      terminal.out().println("The agenda keeps to its brief.");
      return Exit.DONE;
    }
    for (Review.Remark remark : review.remarks()) {
      terminal.out().println(remark.text());
    }
    return Exit.NEGATIVE;
  }
}
