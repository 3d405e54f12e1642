package org.arcwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.CatalogFormat;
import org.arcwright.library.BuiltIn;

/** The catalog that a command works with. */
final class Catalogs {
  private Catalogs() {}

  /**
   * The built-in catalog and what is added to it, in order: a folder adds its entries, each taking
   * the place of one with the same id; a file holds a whole catalog and takes the place of all.
   */
  static Catalog of(List<Path> added) {
    Catalog catalog = null;
    for (Path path : added) {
      if (Files.isDirectory(path)) {
        catalog = CatalogFormat.readDirectory(path, catalog == null ? BuiltIn.catalog() : catalog);
      } else {
        catalog = CatalogFormat.read(path);
      }
    }
    return catalog == null ? BuiltIn.catalog() : catalog;
  }
}
