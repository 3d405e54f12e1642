package org.arcwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.TableFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From a spreadsheet or another program into a catalog folder. */
@Command(
    name = "import",
    description = {
      "Reads exercises from a table, or a whole catalog from JSON, and writes a file for each into a"
          + " catalog folder.",
      ""
    },
    footer = {"", "The columns are explained in library-data/README.md."},
    sortOptions = false)
final class CatalogImportCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "a table, with a name that ends in .csv, or a catalog in .json")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "the catalog folder to write into; it is made if it is not there")
  private Path out = Path.of("");

  @Option(names = "--replace", description = "write over files that are there already")
  private boolean replace;

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogImportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    CatalogFolder folder = new CatalogFolder(out);
    Exchange form =
        Exchange.ofFile(file.toString())
            .orElseThrow(
                () -> new Refusal(file + ": its name ends in neither .csv nor .json; rename it"));
    String what = form == Exchange.JSON ? addCatalog(folder) : addTable(folder);
    folder.write(replace);
    terminal.out().println("Wrote " + what + " to " + out + ".");
    return Exit.DONE;
  }

  private String addCatalog(CatalogFolder folder) {
    Catalog catalog = CatalogFormat.read(file);
    folder.add("products.yaml", CatalogFormat.writeProducts(catalog.products().values()));
    folder.add("tools.yaml", CatalogFormat.writeTools(catalog.tools().values()));
    folder.addExercises(catalog.exercises().values());
    folder.addGoals(catalog.goals().values());
    return count(catalog.exercises().size(), "exercise")
        + ", "
        + count(catalog.goals().size(), "goal")
        + " and their words";
  }

  private String addTable(CatalogFolder folder) {
    List<List<String>> rows = Csv.read(file.toString(), InputText.read(file));
    List<Exercise> exercises = TableFormat.read(file.toString(), rows, words());
    folder.addExercises(exercises);
    return count(exercises.size(), "exercise");
  }

  /** The catalog, and the words that the folder names already. */
  private Catalog words() {
    Catalog catalog = catalogs.read(more, terminal).catalog();
    List<Product> products = new ArrayList<>(catalog.products().values());
    List<Tool> tools = new ArrayList<>(catalog.tools().values());
    Path ownProducts = out.resolve("products.yaml");
    Path ownTools = out.resolve("tools.yaml");
    if (Files.exists(ownProducts)) {
      CatalogFormat.readProducts(ownProducts).stream()
          .filter(product -> !catalog.products().containsKey(product.id()))
          .forEach(products::add);
    }
    if (Files.exists(ownTools)) {
      CatalogFormat.readTools(ownTools).stream()
          .filter(tool -> !catalog.tools().containsKey(tool.id()))
          .forEach(tools::add);
    }
    return Catalog.of(products, tools, List.of(), List.of());
  }

  private static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
