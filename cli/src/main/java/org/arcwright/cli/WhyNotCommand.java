package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Layers;
import org.arcwright.cli.document.WhyNotPage;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Review;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.WhyNotFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Why an exercise is not in an agenda. */
@Command(
    name = "why-not",
    description = {
      "Says why an exercise is not in an agenda: what in the brief rules it out, or how the best"
          + " agenda with it would differ, or what clashes with it.",
      ""
    },
    sortOptions = false)
final class WhyNotCommand implements Callable<Integer> {
  @Mixin private AgendaInput input = new AgendaInput();

  @Parameters(index = "1", paramLabel = "EXERCISE", description = "the exercise's id")
  private String exercise = "";

  @Parameters(index = "2..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private FormOption form = new FormOption();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  @Mixin private BudgetOption budget = new BudgetOption();

  private final Terminal terminal;

  WhyNotCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Layers layers = catalogs.read(more, terminal);
    Catalog catalog = layers.catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Brief brief = read.demandBrief();
    Agenda agenda = read.agenda();
    String id = Wanted.exercise(layers, exercise).id();
    WhyNot answer = read.asking(() -> answer(brief, agenda, id, catalog));
    Review review = Composer.of(catalog).check(agenda, brief);
    if (!review.fits()) {
      terminal.err().println("This agenda does not keep to its brief; check says where.");
    }
    terminal
        .out()
        .print(
            form.isJson()
                ? WhyNotFormat.write(answer)
                : page(id, agenda, review, brief, catalog)
                    .write(answer, input.briefFile().map(Path::toString), line(answer, id)));
    return answer instanceof WhyNot.IsIn || answer instanceof WhyNot.Possible
        ? Exit.DONE
        : Exit.NEGATIVE;
  }

  private WhyNotPage page(String id, Agenda agenda, Review review, Brief brief, Catalog catalog) {
    return new WhyNotPage(
        id,
        agenda,
        review.figures(),
        Composer.of(catalog).prices(agenda, brief),
        catalog,
        terminal.width());
  }

  /** The line of the brief that rules the exercise out, if it is a file of its own. */
  private OptionalInt line(WhyNot answer, String id) {
    return answer instanceof WhyNot.RuledOut ruled && input.briefFile().isPresent()
        ? ruled
            .leftOut()
            .field()
            .map(field -> BriefFormat.line(input.briefFile().get(), field, id))
            .orElse(OptionalInt.empty())
        : OptionalInt.empty();
  }

  private WhyNot answer(Brief brief, Agenda agenda, String id, Catalog catalog) {
    return Progress.during(
        terminal,
        budget.time(),
        () -> Explainer.of(catalog).whyNot(brief, agenda, id, Budget.of(budget.time())));
  }
}
