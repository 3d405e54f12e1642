package org.arcwright.cli;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.document.WhatIfDocument;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Sweep;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.WhatIf.Row;
import org.arcwright.format.WhatIfFormat;
import picocli.CommandLine.Option;

/** A figure of the brief that somebody wants to see varied. */
final class VaryOption {
  @Option(
      names = "--vary",
      paramLabel = "FIGURE=FROM..TO/STEP",
      converter = SweepConverter.class,
      description =
          "show how the best agenda changes with cap=2h..4h/15m, people=6..20, buffer=0%%..30%%/5%%"
              + " or energy=-1..1/0.5 (levels livelier than the brief's curve)")
  private Optional<Sweep> sweep = Optional.empty();

  boolean wanted() {
    return sweep.isPresent();
  }

  /** Composes the brief once for each value; somebody who watches hears how far it is. */
  WhatIf.Answer ask(Brief brief, Catalog catalog, Duration budget, Terminal terminal) {
    Sweep asked = sweep.orElseThrow();
    AtomicInteger done = new AtomicInteger();
    int values = asked.values().size();
    return Progress.during(
        terminal.err(),
        terminal.progress(),
        () -> "Composing: " + done.get() + " of " + values + " done",
        () ->
            WhatIf.ask(
                Composer.of(catalog),
                brief,
                asked,
                Budget.of(budget),
                Cancel.NEVER,
                row -> done.incrementAndGet()));
  }

  /** Writes what came of it; the exit code says whether there is any agenda. */
  static int deliver(
      WhatIf.Answer answer,
      Brief brief,
      Output form,
      Terminal terminal,
      Optional<WholeFile> outFile) {
    Delivery.of(
        terminal,
        outFile,
        (marks, style, width) ->
            form == Output.JSON
                ? WhatIfFormat.write(answer)
                : WhatIfDocument.text(answer, brief, style, width));
    return answer.rows().stream().anyMatch(Row.Best.class::isInstance) ? Exit.DONE : Exit.NEGATIVE;
  }
}
