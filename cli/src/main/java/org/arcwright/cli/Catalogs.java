package org.arcwright.cli;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.catalog.Layer;
import org.arcwright.catalog.Layers;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.LayerReading;
import org.arcwright.format.Problem;
import org.arcwright.library.BuiltIn;

/** The catalog that a command works with. */
final class Catalogs {
  /** What the catalog that comes with Arcwright is called. */
  static final String BUILT_IN = "built-in";

  private Catalogs() {}

  /** The built-in catalog alone. */
  static Layers builtIn() {
    return Layers.of(BUILT_IN, BuiltIn.catalog());
  }

  /**
   * The built-in catalog and what is added to it, in order: a folder adds its entries, each taking
   * the place of one with the same id, and takes out what it retires; a file holds a whole catalog
   * and takes the place of all.
   *
   * @param lenient whether entries with faults are named on {@code err} and left out
   */
  static Layers of(List<Path> added, boolean lenient, PrintStream err) {
    Layers layers = null;
    for (Path path : added) {
      if (Files.isDirectory(path)) {
        Layers below = layers == null ? builtIn() : layers;
        LayerReading reading = CatalogFormat.readLayer(path, below.catalog());
        layers = below.with(lenient ? leniently(reading, err) : strictly(reading));
      } else {
        layers = Layers.of(path.toString(), CatalogFormat.read(path));
      }
    }
    return layers == null ? builtIn() : layers;
  }

  private static Layer strictly(LayerReading reading) {
    if (reading.problems().isEmpty()) {
      return reading.layer();
    }
    throw new Refusal(lines(reading) + "--lenient names such files, leaves them out and goes on");
  }

  private static Layer leniently(LayerReading reading, PrintStream err) {
    if (!reading.leftOut().isEmpty()) {
      err.print(lines(reading));
      err.println("Left out: " + String.join(", ", reading.leftOut()));
    }
    return reading.layer();
  }

  private static String lines(LayerReading reading) {
    StringBuilder lines = new StringBuilder();
    for (Problem problem : reading.problems()) {
      lines.append(problem.text()).append('\n');
    }
    return lines.toString();
  }
}
