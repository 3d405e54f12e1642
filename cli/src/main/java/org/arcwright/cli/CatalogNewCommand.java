package org.arcwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Layers;
import org.arcwright.format.CatalogFolders;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.Problem;
import org.arcwright.shelf.CatalogCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A new exercise, asked for question by question. */
@Command(
    name = "new",
    description = {
      "Asks you about a new exercise and writes its file, with comments that explain each field. A"
          + " file that is there is never written over.",
      ""
    },
    sortOptions = false)
final class CatalogNewCommand implements Callable<Integer> {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "the catalog folder to write into; this one if not given")
  private Path out = Path.of("");

  @Parameters(index = "0..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogNewCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (Files.exists(out) && !Files.isDirectory(out)) {
      throw new Refusal(out + ": it is a file; name a folder");
    }
    Layers below = catalogs.read(more, terminal);
    Path folder = exercises();
    Interview interview = new Interview(terminal);
    interview.say(
        "Answer each question; Enter takes what stands in brackets, ? explains. Nothing is written"
            + " before the last one.");
    Exercise exercise =
        new ExerciseQuestions(interview, withOwn(below)).ask(id -> isTaken(folder, id));
    Path file = write(exercise, folder);
    terminal.out().println("Written to " + file + ".");
    return check(file, below.catalog());
  }

  /** Where exercises of the folder lie. */
  private Path exercises() {
    return CatalogFolders.around(out).isPresent() ? out : out.resolve("exercises");
  }

  /** The catalog with what the folder holds already, as far as it is sound. */
  private Catalog withOwn(Layers below) {
    Path catalog = CatalogFolders.around(out).orElse(out);
    return CatalogFolders.isOne(catalog)
        ? below.with(CatalogFormat.readLayer(catalog, below.catalog()).layer()).catalog()
        : below.catalog();
  }

  private static boolean isTaken(Path folder, String id) {
    try {
      return CatalogFolders.yamlFiles(folder, Integer.MAX_VALUE).stream()
          .anyMatch(file -> String.valueOf(file.getFileName()).matches(id + "\\.ya?ml"));
    } catch (UncheckedIOException e) {
      throw new Refusal(folder + ": it cannot be read; check its permissions", e);
    }
  }

  private static Path write(Exercise exercise, Path folder) {
    Path file = folder.resolve(exercise.id() + ".yaml");
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new Refusal(folder + ": this folder cannot be made; check the permissions", e);
    }
    if (Files.exists(file)) {
      throw new Refusal(file + ": it is there already; nothing is written over");
    }
    WholeFile.to(file).write(Commented.write(exercise));
    return file;
  }

  private int check(Path file, Catalog below) {
    List<Problem> problems =
        CatalogCheck.over(below, new TextLikeness(below.exercises().values()))
            .check(List.of(file))
            .problems();
    for (Problem problem : problems) {
      terminal.out().println(problem.text());
    }
    return problems.isEmpty() ? Exit.DONE : Exit.NEGATIVE;
  }
}
