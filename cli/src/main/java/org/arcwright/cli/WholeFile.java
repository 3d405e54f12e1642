package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file that is written whole or not at all: beside its place first, then moved there. */
final class WholeFile {
  private final Path file;

  private WholeFile(Path file) {
    this.file = file;
  }

  /**
   * A file to be written later.
   *
   * @throws Refusal if it is plain already that it cannot be
   */
  static WholeFile to(Path file) {
    Path folder = folder(file);
    if (!Files.isDirectory(folder)) {
      throw new Refusal(file + ": there is no folder " + folder + "; make it first");
    }
    if (Files.isDirectory(file)) {
      throw new Refusal(file + ": it is a folder; name a file");
    }
    boolean moved = isOrdinary(file);
    if ((Files.exists(file) && !Files.isWritable(file)) || (moved && !Files.isWritable(folder))) {
      throw new Refusal(file + ": it may not be written; check the permissions of " + folder);
    }
    return new WholeFile(file);
  }

  /** Whether it is the same as another file. */
  boolean is(Path other) {
    try {
      return (Files.exists(file) && Files.exists(other))
          ? Files.isSameFile(file, other)
          : file.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    } catch (IOException e) {
      return false;
    }
  }

  Path path() {
    return file;
  }

  /** Writes the text in UTF-8. */
  void write(String text) {
    try {
      if (isOrdinary(file)) {
        writeBeside(text);
      } else {
        Files.writeString(file, text, UTF_8);
      }
    } catch (IOException e) {
      throw new Refusal(file + ": it cannot be written: " + reason(e), e);
    }
  }

  private void writeBeside(String text) throws IOException {
    Path target = Files.exists(file) ? file.toRealPath() : file;
    Path beside = beside(target);
    try {
      Files.writeString(
          beside, text, UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      move(beside, target);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path beside(Path file) {
    String name = "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part";
    return folder(file).resolve(name);
  }

  private static Path folder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  /** A device or a pipe cannot be moved to. */
  private static boolean isOrdinary(Path file) {
    return !Files.exists(file) || Files.isRegularFile(file);
  }

  private static String reason(IOException e) {
    String reason = e instanceof java.nio.file.FileSystemException f ? f.getReason() : null;
    return reason != null ? reason : String.valueOf(e.getMessage());
  }
}
