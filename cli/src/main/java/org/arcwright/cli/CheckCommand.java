package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Review;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.BriefFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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
  @Parameters(
      index = "0",
      paramLabel = "AGENDA",
      description = "the agenda, in JSON as compose --format json writes it")
  private Path agendaFile = Path.of("");

  @Option(
      names = "--brief",
      paramLabel = "BRIEF",
      required = true,
      description = "the brief it should keep to")
  private Path briefFile = Path.of("");

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
    Brief brief = BriefFormat.read(briefFile, catalog);
    Agenda agenda = AgendaFormat.read(agendaFile);
    noteDifferences(agenda, brief);
    Review review = review(agenda, brief, catalog);
    if (review.fits()) {
      terminal.out().println("The agenda keeps to its brief.");
      return Exit.DONE;
    }
    for (Review.Remark remark : review.remarks()) {
      terminal.out().println(remark.text());
    }
    return Exit.NEGATIVE;
  }

  private Review review(Agenda agenda, Brief brief, Catalog catalog) {
    try {
      return Composer.of(catalog).check(agenda, brief);
    } catch (InvalidValueException e) {
      throw new Refusal(briefFile + ": " + e.getMessage(), e);
    }
  }

  /** An agenda for another workshop breaks many rules at once; this says which one it is for. */
  private void noteDifferences(Agenda agenda, Brief brief) {
    note("goal", agenda.goal(), brief.goal());
    note("mode", agenda.mode().word(), brief.mode().word());
    note("number of people", agenda.people(), brief.group().count());
  }

  private void note(String what, Object inAgenda, Object inBrief) {
    if (!inAgenda.equals(inBrief)) {
      terminal
          .err()
          .println(
              "The " + what + " in the agenda is " + inAgenda + ", in the brief " + inBrief + ".");
    }
  }
}
