package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Layers;
import org.arcwright.cli.document.ComparisonPage;
import org.arcwright.shelf.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Two exercises side by side. */
@Command(
    name = "compare",
    description = {"Shows two exercises side by side, and says in a sentence what differs.", ""},
    sortOptions = false)
final class CatalogCompareCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "A", description = "id of an exercise")
  private String one = "";

  @Parameters(index = "1", paramLabel = "B", description = "id of another")
  private String other = "";

  @Parameters(index = "2..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogCompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Layers layers = catalogs.read(more, terminal);
    Comparison comparison =
        Comparison.of(Wanted.exercise(layers, one), Wanted.exercise(layers, other));
    terminal
        .out()
        .print(
            ComparisonPage.write(
                comparison,
                layers.catalog(),
                terminal.marks(),
                terminal.style(),
                Math.min(terminal.width(), Terminal.PAGE)));
    return Exit.DONE;
  }
}
