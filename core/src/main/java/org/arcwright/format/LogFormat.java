package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.TextFile;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;

/**
 * Progress logs: JSON lines (a JSON object on each line, at most 64 MB in all), to which each entry
 * is added at the end. The first line says which day it is of:
 *
 * <pre>{@code
 * {"format":"arcwright-log","version":1,"title":"Winter planning","mode":"remote","people":12,"start":"2026-12-03 09:30","zone":"Europe/Vienna"}
 * {"at":"2026-12-03T09:34:10+01:00","started":"weather-report","planned":10}
 * {"at":"2026-12-03T09:40:00+01:00","note":"Two people join by phone"}
 * {"at":"2026-12-03T09:46:30+01:00","ended":"weather-report"}
 * {"at":"2026-12-03T09:46:31+01:00","started":"break","planned":10}
 * {"at":"2026-12-03T09:46:40+01:00","undo":true}
 * {"at":"2026-12-03T09:50:00+01:00","energy":4}
 * {"at":"2026-12-03T11:00:00+01:00","decision":"We start with the second option"}
 * }</pre>
 *
 * <p>Times are dates and times of day with their offset (RFC 3339); planned times are minutes.
 * {@code agreed} is the whole agenda that the day follows from then on; {@code undo} takes back the
 * last entry that still stands; nothing is ever erased.
 *
 * <p>Where a program or a machine stopped in the middle of a line, that line never closes; it is
 * named and passed over, be it the last one or, after work went on, one further up. Everything else
 * that is wrong is a problem with its line.
 */
public final class LogFormat {
  private LogFormat() {}

  /**
   * A log as it was read.
   *
   * @param progress what it says
   * @param torn lines that were begun and never finished, and are passed over
   */
  public record Reading(Progress progress, List<Problem> torn) {
    /** Takes a copy. */
    public Reading {
      torn = List.copyOf(torn);
    }
  }

  /**
   * Reads a file.
   *
   * @throws FormatException with all that is wrong
   */
  public static Reading read(Path file) {
    Faults faults = new Faults();
    Optional<byte[]> bytes = TextFile.bytes(file, Document.BY_PROGRAM, faults);
    if (bytes.isEmpty()) {
      throw new FormatException(
          faults.list().stream()
              .map(fault -> LogReader.problem(file.toString(), 0, fault))
              .toList());
    }
    return LogReader.read(file.toString(), bytes.get());
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Reading read(String name, String text) {
    return LogReader.read(name, text.getBytes(UTF_8));
  }

  /** The whole log, each line with its end. */
  public static String write(Progress progress) {
    StringBuilder lines = new StringBuilder(write(progress.workshop()));
    progress.entries().forEach(entry -> lines.append(write(entry)));
    return lines.toString();
  }

  /** The first line, with its end. */
  public static String write(Workshop workshop) {
    return line(LogReader.tree(workshop));
  }

  /** One more line, with its end. */
  public static String write(LogEntry entry) {
    return line(LogEntryForm.tree(entry));
  }

  private static String line(Node node) {
    return JsonWriter.writeDense(node) + "\n";
  }
}
