package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;

/**
 * A log that is being written. Each entry is on the disk before {@link #append} returns, so that
 * neither a killed program nor a power cut takes more than the entry in hand. One program at a time
 * may hold it. Not thread-safe.
 */
public final class LogFile implements AutoCloseable {
  private final FileChannel channel;
  private final List<Problem> torn;
  private Progress progress;
  private boolean withinLine;

  private LogFile(FileChannel channel, LogFormat.Reading reading, boolean withinLine) {
    this.channel = channel;
    this.progress = reading.progress();
    this.torn = reading.torn();
    this.withinLine = withinLine;
  }

  /**
   * Takes a log up where it was left, or begins one where there is no file, an empty one, or one
   * whose first line was never finished.
   *
   * @param workshop which day it is of, for a new log; one that is there already says so itself
   * @throws FormatException with all that is wrong in a log that is there
   * @throws IOException if it cannot be read or written, or another program holds it
   */
  public static LogFile open(Path file, Workshop workshop) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    try {
      lock(channel, file);
      byte[] bytes = Files.readAllBytes(file);
      boolean withinLine = bytes.length > 0 && bytes[bytes.length - 1] != '\n';
      if (!LogReader.isUnbegun(bytes)) {
        return new LogFile(channel, LogFormat.read(file), withinLine);
      }
      LogFormat.Reading none = new LogFormat.Reading(Progress.of(workshop), List.of());
      LogFile begun = new LogFile(channel, none, withinLine);
      begun.write(LogFormat.write(workshop));
      return begun;
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  private static void lock(FileChannel channel, Path file) throws IOException {
    try {
      if (channel.tryLock() != null) {
        return;
      }
    } catch (OverlappingFileLockException e) {
      // Held by this very program; the same answer serves.
    }
    throw new FileSystemException(file.toString(), null, "another program is writing this log");
  }

  /** What it says so far. */
  public Progress progress() {
    return progress;
  }

  /** Lines that were begun and never finished when it was opened; they are passed over. */
  public List<Problem> torn() {
    return torn;
  }

  /**
   * Adds an entry at the end, on a line of its own even where the last one breaks off.
   *
   * @throws InvalidValueException if the entry cannot follow; see {@link Progress}; then nothing is
   *     written
   * @throws IOException if it cannot be written; then {@link #progress} is as before
   */
  public void append(LogEntry entry) throws IOException {
    Progress next = progress.with(entry);
    write(LogFormat.write(entry));
    progress = next;
  }

  private void write(String line) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(((withinLine ? "\n" : "") + line).getBytes(UTF_8));
    withinLine = true;
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(false);
    withinLine = false;
  }

  /** Lets go of the file. */
  @Override
  public void close() throws IOException {
    channel.close();
  }
}
