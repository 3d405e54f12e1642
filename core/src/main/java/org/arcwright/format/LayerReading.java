package org.arcwright.format;

import java.util.List;
import org.arcwright.catalog.Layer;

/**
 * A layer of a catalog as it was read.
 *
 * @param layer all of it that is sound
 * @param files its exercises and goals as far as they can be read, in the order of file names
 * @param problems what is wrong, file by file
 * @param leftOut names of the files that are not in the layer, or not wholly
 */
public record LayerReading(
    Layer layer, List<CatalogFile> files, List<Problem> problems, List<String> leftOut) {
  /** Takes copies. */
  public LayerReading {
    files = List.copyOf(files);
    problems = List.copyOf(problems);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The layer, if it is sound as a whole.
   *
   * @throws FormatException with all that is wrong
   */
  public Layer strictly() {
    if (!problems.isEmpty()) {
      throw new FormatException(problems);
    }
    return layer;
  }
}
