package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Catalog;
import picocli.CommandLine.Option;

/** Catalogs of one's own. */
final class CatalogOption {
  @Option(
      names = "--catalog",
      paramLabel = "PATH",
      description = {
        "a folder of exercises and goals that adds to the built-in catalog, or a file with a whole"
            + " catalog in its place; may be given several times"
      })
  private List<Path> paths = new ArrayList<>();

  /**
   * Reads them.
   *
   * @param more words that follow the command's own file: whoever lists several paths after one
   *     --catalog means them all
   */
  Catalog read(List<Path> more) {
    if (paths.isEmpty() && !more.isEmpty()) {
      throw new Refusal("arcwright: \"" + more.get(0) + "\" is unknown here; see --help");
    }
    List<Path> all = new ArrayList<>(paths);
    all.addAll(more);
    return Catalogs.of(all);
  }
}
