package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Layers;
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

  @Option(
      names = "--lenient",
      description =
          "name the faulty files of such a folder and leave them out, instead of stopping")
  private boolean lenient;

  /**
   * Reads them.
   *
   * @param more words that follow the command's own file: whoever lists several paths after one
   *     --catalog means them all
   */
  Layers read(List<Path> more, Terminal terminal) {
    if (paths.isEmpty() && !more.isEmpty()) {
      throw new Refusal("arcwright: \"" + more.get(0) + "\" is unknown here; see --help");
    }
    List<Path> all = new ArrayList<>(paths);
    all.addAll(more);
    return Catalogs.of(all, lenient, terminal.err());
  }
}
