package org.arcwright.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files that the built-in catalog is compiled from. */
final class CatalogFiles {
  static final Path FOLDER = Path.of("src/main/catalog");

  private CatalogFiles() {}

  static List<Path> exercises() {
    return below(FOLDER.resolve("exercises"));
  }

  static List<Path> goals() {
    return below(FOLDER.resolve("goals"));
  }

  private static List<Path> below(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
