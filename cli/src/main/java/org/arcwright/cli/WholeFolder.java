package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder that is written whole or not at all: beside its place first, then moved there. One that
 * exists is replaced only if it is empty or holds nothing but what was written here before. A file
 * that somebody has changed since stays as it is, and what is written now stands beside it.
 */
final class WholeFolder {
  /**
   * Lists what was written, so that nothing else is ever taken away: on each line a name, a tab,
   * and the SHA-256 of what it said, by which a change is known.
   */
  private static final String LIST = ".arcwright-written";

  /** Characters of a sum. */
  private static final int SUM = 64;

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
        strangers.removeAll(written().keySet());
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

  /** The names in the list, each with its sum; one without is taken not to have been changed. */
  private Map<String, String> written() throws IOException {
    Map<String, String> written = new TreeMap<>();
    Path list = folder.resolve(LIST);
    if (Files.isRegularFile(list)) {
      for (String line : Files.readAllLines(list, UTF_8)) {
        int tab = line.indexOf('\t');
        written.put(tab < 0 ? line : line.substring(0, tab), line.substring(tab + 1));
      }
    }
    return written;
  }

  /** What was changed by hand: the bytes of each such file. */
  private Map<String, byte[]> changed(Map<String, String> written) throws IOException {
    Map<String, byte[]> changed = new TreeMap<>();
    for (Map.Entry<String, String> entry : written.entrySet()) {
      Path file = folder.resolve(entry.getKey());
      if (entry.getValue().length() == SUM && Files.isRegularFile(file)) {
        byte[] now = Files.readAllBytes(file);
        if (!sum(now).equals(entry.getValue())) {
          changed.put(entry.getKey(), now);
        }
      }
    }
    return changed;
  }

  private static String sum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java knows SHA-256", e);
    }
  }

  /** {@code run-sheet.new.html} beside {@code run-sheet.html}. */
  private static String beside(String name) {
    int dot = name.lastIndexOf('.');
    return dot < 0 ? name + ".new" : name.substring(0, dot) + ".new" + name.substring(dot);
  }

  /**
   * Writes the files in UTF-8; names are of letters, digits, dots and hyphens.
   *
   * @return the names of those that somebody has changed and that stay, each with the name under
   *     which it was written anew; none if there is nothing new in it
   */
  Map<String, Optional<String>> write(Map<String, String> files) {
    String own = String.valueOf(folder.getFileName());
    long process = ProcessHandle.current().pid();
    Path beside = folder.resolveSibling("." + own + "." + process + ".part");
    Path old = folder.resolveSibling("." + own + "." + process + ".old");
    try {
      Files.createDirectory(beside);
      Map<String, Optional<String>> kept = fill(beside, files);
      if (Files.exists(folder)) {
        Files.move(folder, old);
      }
      Files.move(beside, folder);
      remove(old);
      return kept;
    } catch (IOException e) {
      restore(old);
      throw new Refusal(folder + ": it cannot be written: " + e.getMessage(), e);
    } finally {
      remove(beside);
    }
  }

  /** Puts the files, what was changed by hand, and the list of both into a new folder. */
  private Map<String, Optional<String>> fill(Path beside, Map<String, String> files)
      throws IOException {
    Map<String, String> written = written();
    Map<String, byte[]> changed = changed(written);
    Map<String, Optional<String>> kept = new TreeMap<>();
    Map<String, String> sums = new TreeMap<>();
    for (Map.Entry<String, byte[]> file : changed.entrySet()) {
      Files.write(beside.resolve(safe(file.getKey())), file.getValue());
      sums.put(file.getKey(), written.get(file.getKey()));
      kept.put(file.getKey(), Optional.empty());
    }
    for (Map.Entry<String, String> file : files.entrySet()) {
      String name = safe(file.getKey());
      byte[] bytes = file.getValue().getBytes(UTF_8);
      if (changed.containsKey(name) && sum(bytes).equals(written.get(name))) {
        continue;
      }
      while (changed.containsKey(name)) {
        name = beside(name);
      }
      Files.write(beside.resolve(name), bytes);
      sums.put(name, sum(bytes));
      if (changed.containsKey(file.getKey())) {
        kept.put(file.getKey(), Optional.of(name));
      }
    }
    Files.write(
        beside.resolve(LIST),
        sums.entrySet().stream().map(entry -> entry.getKey() + "\t" + entry.getValue()).toList(),
        UTF_8);
    return kept;
  }

  /** Says what somebody has changed and what was therefore written beside it. */
  static void sayKept(Map<String, Optional<String>> kept, Terminal terminal) {
    kept.forEach(
        (name, anew) ->
            terminal
                .err()
                .println(
                    name
                        + " was changed by hand and stays as it is"
                        + anew.map(other -> "; the new one is " + other + ".").orElse(".")));
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
