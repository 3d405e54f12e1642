package org.arcwright.library.compile;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.CatalogFormat;

/** Reads the catalog's folder and writes it as one resource. */
public final class CatalogCompiler {
  private CatalogCompiler() {}

  /**
   * Run by the build.
   *
   * @param args the catalog's folder and the file to write
   * @throws org.arcwright.format.FormatException with all that is wrong in the folder; nothing is
   *     written then
   */
  public static void main(String[] args) throws IOException {
    Catalog catalog = CatalogFormat.readDirectory(Path.of(args[0]));
    Path target = Path.of(args[1]);
    Files.createDirectories(Objects.requireNonNull(target.getParent()));
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target))) {
      CatalogFormat.writeCompiled(catalog, out);
    }
  }
}
