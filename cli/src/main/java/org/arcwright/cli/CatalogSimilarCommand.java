package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Layers;
import org.arcwright.cli.document.SimilarList;
import org.arcwright.shelf.Similar;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Exercises that are like one. */
@Command(
    name = "similar",
    description = {
      "Lists the exercises most like one, such as to take in its place, each with the reason.",
      ""
    },
    sortOptions = false)
final class CatalogSimilarCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "ID", description = "id of an exercise")
  private String id = "";

  @Option(names = "--count", paramLabel = "N", description = "how many; 6 if not given")
  private int count = 6;

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogSimilarCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (count < 1) {
      throw new Refusal("--count " + count + ": 1 or more is right");
    }
    Layers layers = catalogs.read(more, terminal);
    Catalog catalog = layers.catalog();
    Exercise exercise = Wanted.exercise(layers, id);
    List<Similar> similar =
        Similar.to(exercise, catalog, new TextLikeness(catalog.exercises().values()), count);
    terminal
        .out()
        .print(
            SimilarList.write(
                exercise,
                similar,
                catalog,
                terminal.marks(),
                terminal.style(),
                Math.min(terminal.width(), Terminal.PAGE)));
    return Exit.DONE;
  }
}
