package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Catalog;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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

  /** Whoever lists several after one --catalog means them all. */
  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  Catalog read() {
    if (paths.isEmpty() && !more.isEmpty()) {
      throw new Refusal("arcwright: \"" + more.get(0) + "\" is unknown here; see --help");
    }
    paths.addAll(more);
    return Catalogs.of(paths);
  }
}
