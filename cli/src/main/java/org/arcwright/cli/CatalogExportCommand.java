package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.TableFormat;
import org.arcwright.library.BuiltIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The catalog for spreadsheets and other programs. */
@Command(
    name = "export",
    description = {
      "Writes the exercises as a table for a spreadsheet, or the whole catalog for another program.",
      ""
    },
    footer = {"", "The columns are explained in library-data/README.md."},
    sortOptions = false)
final class CatalogExportCommand implements Callable<Integer> {
  @Option(
      names = "--format",
      paramLabel = "FORM",
      converter = Exchange.Converter.class,
      description =
          "csv (the exercises) or json (all); without it, as the name given to --out ends, else csv")
  private Optional<Exchange> format = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write to this file instead of standard output")
  private Optional<Path> out = Optional.empty();

  @Parameters(index = "0..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  @Option(
      names = "--own",
      description = "only the exercises and goals that --catalog adds or replaces")
  private boolean own;

  private final Terminal terminal;

  CatalogExportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Optional<WholeFile> file = out.map(WholeFile::to);
    Catalog catalog = catalogs.read(more, terminal).catalog();
    Catalog chosen = own ? own(catalog) : catalog;
    String text = form() == Exchange.JSON ? CatalogFormat.write(chosen) : table(chosen);
    if (file.isPresent()) {
      file.get().write(text);
    } else {
      terminal.out().print(text);
    }
    return Exit.DONE;
  }

  private Exchange form() {
    return format
        .or(() -> out.flatMap(file -> Exchange.ofFile(file.toString())))
        .orElse(Exchange.CSV);
  }

  private static Catalog own(Catalog catalog) {
    Catalog builtIn = BuiltIn.catalog();
    Catalog own =
        Catalog.of(
            catalog.products().values(),
            catalog.tools().values(),
            catalog.exercises().values().stream()
                .filter(e -> !Optional.of(e).equals(builtIn.exercise(e.id())))
                .toList(),
            catalog.goals().values().stream()
                .filter(g -> !Optional.of(g).equals(builtIn.goal(g.id())))
                .toList());
    if (own.exercises().isEmpty() && own.goals().isEmpty()) {
      throw new Refusal(
          "--own: nothing adds to the built-in catalog; name a folder with --catalog");
    }
    return own;
  }

  private static String table(Catalog catalog) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(TableFormat.header());
    catalog.exercises().values().forEach(exercise -> rows.add(TableFormat.row(exercise)));
    return Csv.write(rows);
  }
}
