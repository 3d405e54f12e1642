package org.arcwright.format;

import static java.util.stream.Collectors.toList;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How the files of a catalog lie in folders; {@link CatalogFormat} says which file lies where. */
public final class CatalogFolders {
  static final String EXERCISES = "exercises";
  static final String GOALS = "goals";
  static final String PRODUCTS = "products.yaml";
  static final String TOOLS = "tools.yaml";

  private CatalogFolders() {}

  /** Whether the folder holds anything that a catalog folder holds. */
  public static boolean isOne(Path folder) {
    return Files.isDirectory(folder.resolve(EXERCISES))
        || Files.isDirectory(folder.resolve(GOALS))
        || Files.isRegularFile(folder.resolve(PRODUCTS))
        || Files.isRegularFile(folder.resolve(TOOLS));
  }

  /** The catalog folder that a file or folder within one belongs to. */
  public static Optional<Path> around(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    for (Path inner = absolute; inner != null; inner = inner.getParent()) {
      String name = String.valueOf(inner.getFileName());
      boolean part =
          Files.isDirectory(inner)
              ? name.equals(EXERCISES) || name.equals(GOALS)
              : inner.equals(absolute) && (name.equals(PRODUCTS) || name.equals(TOOLS));
      if (part) {
        return Optional.ofNullable(inner.getParent());
      }
    }
    return Optional.empty();
  }

  /**
   * The YAML files in the folder, by name; none if there is no such folder.
   *
   * @param depth how many folders deep: 1 for the folder itself
   * @throws UncheckedIOException if a folder cannot be read
   */
  public static List<Path> yamlFiles(Path folder, int depth) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder, depth)) {
      return files
          .filter(file -> String.valueOf(file.getFileName()).matches("[^.].*\\.ya?ml"))
          .filter(Files::isRegularFile)
          .sorted()
          .collect(toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
