package org.arcwright.shelf;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.CatalogFolders;
import org.arcwright.format.FormatException;
import org.arcwright.format.LayerReading;
import org.arcwright.format.Place;
import org.arcwright.format.Problem;
import org.arcwright.shelf.CatalogCheck.Report;

/**
 * Files and folders that are checked together.
 *
 * @param folder the catalog folder they lie in; none for files that lie elsewhere
 * @param wanted the files and folders themselves
 */
record CheckedPaths(Optional<Path> folder, List<Path> wanted) {

  /**
   * Sorts what a person named into groups.
   *
   * @throws FormatException if something is not there, or a folder holds nothing to check
   */
  static List<CheckedPaths> of(List<Path> paths) {
    Map<Path, List<Path>> inFolders = new LinkedHashMap<>();
    List<Path> elsewhere = new ArrayList<>();
    for (Path path : paths) {
      if (!Files.exists(path)) {
        throw refuse(path, "no such file or folder", "check its name");
      }
      Optional<Path> folder =
          Files.isDirectory(path) && CatalogFolders.isOne(path)
              ? Optional.of(path)
              : CatalogFolders.around(path).map(around -> asNamed(around, path));
      if (folder.isPresent()) {
        inFolders.computeIfAbsent(folder.get(), f -> new ArrayList<>()).add(path);
      } else if (Files.isDirectory(path)) {
        List<Path> files = CatalogFolders.yamlFiles(path, Integer.MAX_VALUE);
        if (files.isEmpty()) {
          throw refuse(path, "nothing to check", "name a folder with YAML files in it");
        }
        elsewhere.addAll(files);
      } else {
        elsewhere.add(path);
      }
    }
    List<CheckedPaths> groups = new ArrayList<>();
    inFolders.forEach(
        (folder, wanted) -> groups.add(new CheckedPaths(Optional.of(folder), wanted)));
    if (!elsewhere.isEmpty()) {
      groups.add(new CheckedPaths(Optional.empty(), elsewhere));
    }
    return groups;
  }

  /** The folder in the words in which a path within it was named, if these reach so far. */
  private static Path asNamed(Path folder, Path within) {
    int steps = within.toAbsolutePath().normalize().getNameCount() - folder.getNameCount();
    int kept = within.normalize().getNameCount() - steps;
    if (within.isAbsolute() || kept <= 0 || within.startsWith("..")) {
      return folder;
    }
    return within.normalize().subpath(0, kept);
  }

  private static FormatException refuse(Path path, String what, String remedy) {
    return new FormatException(
        List.of(new Problem(new Place(path.toString(), 0, 0), what, "", remedy)));
  }

  /** The part of a report on the folder that is about what was named. */
  Report only(LayerReading reading, Report report) {
    if (folder.isEmpty() || wanted.contains(folder.get())) {
      return report;
    }
    List<CatalogFile> files = reading.files().stream().filter(f -> isWanted(f.name())).toList();
    Set<String> ids =
        files.stream()
            .flatMap(
                file ->
                    Optional.of(file)
                        .flatMap(CatalogFile::exercise)
                        .map(exercise -> exercise.id())
                        .or(() -> file.goal().map(goal -> goal.id()))
                        .stream())
            .collect(Collectors.toSet());
    List<Problem> problems =
        report.problems().stream().filter(p -> isWanted(p.place().file())).toList();
    Set<String> unread = new HashSet<>();
    problems.forEach(problem -> unread.add(problem.place().file()));
    files.forEach(file -> unread.remove(file.name()));
    return new Report(
        files.size() + unread.size(),
        problems,
        report.replaced().stream().filter(ids::contains).toList());
  }

  private boolean isWanted(String file) {
    Path absolute = Path.of(file).toAbsolutePath().normalize();
    return wanted.stream().anyMatch(path -> absolute.startsWith(path.toAbsolutePath().normalize()));
  }
}
