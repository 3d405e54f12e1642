package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.format.CatalogFormat;

/**
 * A catalog folder that is written to: all files are written beside it first, then moved in, so
 * that none is ever half written and a fault leaves all as it was.
 */
final class CatalogFolder {
  private final Path folder;
  private final Map<Path, String> texts = new LinkedHashMap<>();

  CatalogFolder(Path folder) {
    this.folder = folder;
  }

  /** Adds the exercises, a file each. */
  void addExercises(Collection<Exercise> exercises) {
    for (Exercise exercise : exercises) {
      texts.put(place("exercises", exercise.id()), CatalogFormat.write(exercise));
    }
  }

  /** Adds the goals, a file each. */
  void addGoals(Collection<Goal> goals) {
    for (Goal goal : goals) {
      texts.put(place("goals", goal.id()), CatalogFormat.write(goal));
    }
  }

  /** Adds a file by its name. */
  void add(String name, String text) {
    texts.put(folder.resolve(name), text);
  }

  /** Where the entry stands already, in whatever folder; else where it is to stand. */
  private Path place(String kind, String id) {
    Path entries = folder.resolve(kind);
    Path usual = entries.resolve(id + ".yaml");
    if (!Files.isDirectory(entries)) {
      return usual;
    }
    try (Stream<Path> files = Files.walk(entries)) {
      Optional<Path> there =
          files
              .filter(file -> String.valueOf(file.getFileName()).matches(id + "\\.ya?ml"))
              .findFirst();
      return there.orElse(usual);
    } catch (IOException | UncheckedIOException e) {
      throw new Refusal(entries + ": it cannot be read; check its permissions", e);
    }
  }

  /**
   * Writes all files.
   *
   * @param replace whether files that are there already may be replaced
   * @throws Refusal if that cannot be; nothing has been changed then, or the message says what
   */
  void write(boolean replace) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new Refusal(folder + ": it is a file; name a folder");
    }
    List<Path> there = texts.keySet().stream().filter(Files::exists).toList();
    if (!there.isEmpty() && !replace) {
      throw new Refusal(
          there.get(0)
              + ": it is there already"
              + (there.size() == 1 ? "" : ", and so are " + (there.size() - 1) + " more")
              + "; say --replace to write over, or name another folder");
    }
    try {
      Files.createDirectories(folder);
      Path beside = Files.createTempDirectory(folder, ".import-");
      try {
        moveIn(writeInto(beside));
      } finally {
        remove(beside);
      }
    } catch (IOException e) {
      String reason = e instanceof FileSystemException f ? f.getReason() : null;
      throw new Refusal(
          folder
              + ": it cannot be written: "
              + (reason != null ? reason : String.valueOf(e.getMessage())),
          e);
    }
  }

  private Map<Path, Path> writeInto(Path beside) throws IOException {
    Map<Path, Path> written = new LinkedHashMap<>();
    for (Map.Entry<Path, String> file : texts.entrySet()) {
      Path part = beside.resolve(String.valueOf(written.size()));
      Files.writeString(part, file.getValue(), UTF_8);
      written.put(part, file.getKey());
    }
    return written;
  }

  private static void moveIn(Map<Path, Path> written) throws IOException {
    for (Path file : written.values()) {
      Path parent = file.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
    }
    for (Map.Entry<Path, Path> file : written.entrySet()) {
      Files.move(file.getKey(), file.getValue(), StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void remove(Path folder) throws IOException {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).forEach(all::add);
    }
    for (Path file : all) {
      Files.delete(file);
    }
  }
}
