package org.arcwright.format;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.format.LogFormat.Reading;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Syntax;
import org.arcwright.format.tree.TextFile;
import org.arcwright.format.tree.TreeReader;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;

/**
 * Reads a log line by line, and writes its first one. It reads bytes, for a line may break off
 * within a character.
 */
final class LogReader {
  private static final Keys WORKSHOP =
      Keys.of(
          "format: \"arcwright-log\"",
          "version: 1",
          "title: \"Winter planning\"",
          "mode: \"remote\"",
          "people: 12",
          "start: \"2026-12-03 09:30\"",
          "zone: \"Europe/Vienna\"",
          "simulated: true",
          "rehearsal: true");

  private final String name;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> torn = new ArrayList<>();
  private final List<LogEntry> entries = new ArrayList<>();
  private final List<Integer> lines = new ArrayList<>();
  private Optional<Workshop> workshop = Optional.empty();
  private boolean begun;
  private boolean isLog;

  private LogReader(String name) {
    this.name = name;
  }

  /**
   * Reads all lines.
   *
   * @throws FormatException with all that is wrong
   */
  static Reading read(String name, byte[] bytes) {
    LogReader reader = readLines(name, bytes);
    return reader.end();
  }

  /** Whether no line of it was ever finished, so that it says nothing yet. */
  static boolean isUnbegun(byte[] bytes) {
    LogReader reader = readLines("", bytes);
    return !reader.begun && reader.problems.isEmpty();
  }

  private static LogReader readLines(String name, byte[] bytes) {
    LogReader reader = new LogReader(name);
    int line = 0;
    int from = 0;
    while (from < bytes.length) {
      int to = from;
      while (to < bytes.length && bytes[to] != '\n') {
        to++;
      }
      reader.line(++line, Arrays.copyOfRange(bytes, from, to));
      from = to + 1;
    }
    return reader;
  }

  /** What is wrong in a line, which was read as a document of its own. */
  static Problem problem(String name, int line, Fault fault) {
    return new Problem(
        new Place(name, line, line == 0 ? 0 : Math.max(1, fault.column())),
        fault.what(),
        fault.value(),
        fault.remedy());
  }

  private void line(int line, byte[] bytes) {
    if (isTorn(bytes)) {
      torn.add(
          new Problem(
              new Place(name, line, bytes.length + 1),
              "line that breaks off",
              "",
              "this entry was never finished and is passed over; enter it again if it matters"));
      return;
    }
    Faults faults = new Faults();
    Optional<String> text = TextFile.decode(bytes, faults);
    if (text.isEmpty() || !text.get().isBlank()) {
      text.flatMap(t -> TreeReader.read(Syntax.JSON, t, faults))
          .ifPresent(node -> object(line, node, faults));
    }
    faults.list().forEach(fault -> problems.add(problem(name, line, fault)));
  }

  /**
   * Whether something is begun and never closed, or zeros stand where text should: what a program
   * or a machine leaves that stops while it writes.
   */
  private static boolean isTorn(byte[] line) {
    int depth = 0;
    boolean quoted = false;
    boolean escaped = false;
    for (byte b : line) {
      if (b == 0) {
        return true;
      }
      if (escaped) {
        escaped = false;
      } else if (quoted) {
        escaped = b == '\\';
        quoted = b != '"';
      } else {
        quoted = b == '"';
        depth += b == '{' || b == '[' ? 1 : 0;
        depth -= b == '}' || b == ']' ? 1 : 0;
      }
    }
    return quoted || depth > 0;
  }

  private void object(int line, Node node, Faults faults) {
    if (!begun) {
      begun = true;
      isLog = problems.isEmpty() && node.lookUp("format").isPresent();
      workshop = workshop(node, faults);
      return;
    }
    Optional<LogEntry> entry = LogEntryForm.read(node, faults);
    if (entry.isPresent()) {
      entries.add(entry.get());
      lines.add(line);
    }
  }

  private static Optional<Workshop> workshop(Node node, Faults faults) {
    Fields fields = Fields.of(node, "log", WORKSHOP, faults);
    Header.LOG.demand(fields, faults);
    String title = fields.text("title");
    Mode mode = fields.word(Mode.class, "mode");
    int people = fields.whole("people");
    Optional<ZonedDateTime> start = new BriefTimes(fields, faults).start();
    boolean simulated = fields.flag("simulated");
    boolean rehearsal = fields.flag("rehearsal");
    return fields.build(() -> new Workshop(title, mode, people, start, simulated, rehearsal));
  }

  private Reading end() {
    if (!begun && problems.isEmpty()) {
      throw none("empty log", "its first line says which day it is of");
    }
    if (!problems.isEmpty() && !isLog) {
      throw none("no log", "a log is JSON lines, and its first says which day it is of");
    }
    if (!problems.isEmpty()) {
      throw new FormatException(problems);
    }
    try {
      return new Reading(new Progress(workshop.orElseThrow(), entries), torn);
    } catch (InvalidValueException e) {
      throw new FormatException(List.of(outOfOrder(e)));
    }
  }

  private FormatException none(String what, String remedy) {
    Place first = new Place(name, 1, 1);
    String such = ", such as {\"format\":\"arcwright-log\", ...}";
    return new FormatException(List.of(new Problem(first, what, "", remedy + such)));
  }

  /** An entry that cannot follow those before it; the field is such as {@code entries[3].ended}. */
  private Problem outOfOrder(InvalidValueException e) {
    String field = e.field();
    int entry = Integer.parseInt(field.substring(field.indexOf('[') + 1, field.indexOf(']')));
    return new Problem(
        new Place(name, lines.get(entry), 1),
        field.substring(field.indexOf('.') + 1),
        e.value(),
        e.remedy());
  }

  static Node tree(Workshop workshop) {
    Branch branch =
        Header.LOG
            .begin()
            .put("title", workshop.title())
            .put("mode", workshop.mode().word())
            .put("people", workshop.people());
    Times.putStart(branch, workshop.start());
    if (workshop.simulated()) {
      branch.put("simulated", true);
    }
    return (workshop.rehearsal() ? branch.put("rehearsal", true) : branch).end();
  }
}
