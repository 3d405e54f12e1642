package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder that is written whole or not at all: beside its place first, then moved there. One that
 * exists is replaced only if it is empty or holds nothing but what was written here before.
 */
final class WholeFolder {
  /** Lists what was written, so that nothing else is ever taken away. */
  private static final String LIST = ".arcwright-written";

  private final Path folder;

  private WholeFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  /**
   * A folder to be written later.
   *
   * @throws Refusal if it is plain already that it cannot be
   */
  static WholeFolder to(Path path) {
    WholeFolder whole = new WholeFolder(path);
    Path parent = whole.folder.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      throw new Refusal(path + ": there is no folder to put it into; make it first");
    }
    if (!Files.isWritable(parent)) {
      throw new Refusal(path + ": it may not be written; check the permissions of " + parent);
    }
    if (Files.exists(whole.folder) && !Files.isDirectory(whole.folder)) {
      throw new Refusal(path + ": it is a file; name a folder");
    }
    whole.refuseStrangers(path);
    return whole;
  }

  private void refuseStrangers(Path path) {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> entries = Files.list(folder)) {
      Set<String> strangers =
          entries
              .map(entry -> String.valueOf(entry.getFileName()))
              .collect(Collectors.toCollection(TreeSet::new));
      Path list = folder.resolve(LIST);
      if (Files.isRegularFile(list)) {
        strangers.removeAll(Files.readAllLines(list, UTF_8));
        strangers.remove(LIST);
      }
      if (!strangers.isEmpty()) {
        throw new Refusal(
            path
                + ": it holds "
                + strangers.iterator().next()
                + ", which was not written here; name a new folder, or move that elsewhere");
      }
    } catch (IOException e) {
      throw new Refusal(path + ": it cannot be read: " + e.getMessage(), e);
    }
  }

  /** What a file in it says now, if it is there. */
  Optional<String> earlier(String name) {
    try {
      Path file = folder.resolve(name);
      return Files.isRegularFile(file)
          ? Optional.of(Files.readString(file, UTF_8))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Writes the files in UTF-8; names are of letters, digits, dots and hyphens. */
  void write(Map<String, String> files) {
    String own = String.valueOf(folder.getFileName());
    long process = ProcessHandle.current().pid();
    Path beside = folder.resolveSibling("." + own + "." + process + ".part");
    Path old = folder.resolveSibling("." + own + "." + process + ".old");
    try {
      Files.createDirectory(beside);
      for (Map.Entry<String, String> file : files.entrySet()) {
        Files.writeString(beside.resolve(safe(file.getKey())), file.getValue(), UTF_8);
      }
      Files.write(beside.resolve(LIST), new TreeSet<>(files.keySet()), UTF_8);
      if (Files.exists(folder)) {
        Files.move(folder, old);
      }
      Files.move(beside, folder);
      remove(old);
    } catch (IOException e) {
      restore(old);
      throw new Refusal(folder + ": it cannot be written: " + e.getMessage(), e);
    } finally {
      remove(beside);
    }
  }

  private void restore(Path old) {
    try {
      if (Files.exists(old) && !Files.exists(folder)) {
        Files.move(old, folder);
      }
    } catch (IOException e) {
      throw new Refusal(folder + ": what stood there is now in " + old, e);
    }
  }

  private static String safe(String name) {
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9.-]*")) {
      throw new IllegalArgumentException("no name for a file: " + name);
    }
    return name;
  }

  private static void remove(Path flat) {
    if (!Files.isDirectory(flat)) {
      return;
    }
    try (Stream<Path> entries = Files.list(flat)) {
      List<Path> files = entries.toList();
      for (Path file : files) {
        Files.delete(file);
      }
      Files.delete(flat);
    } catch (IOException e) {
      throw new Refusal(flat + ": it is left over and cannot be removed; remove it by hand", e);
    }
  }
}
