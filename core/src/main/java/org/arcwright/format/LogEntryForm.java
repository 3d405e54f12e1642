package org.arcwright.format;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.arcwright.agenda.Agenda;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Values;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.Decision;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.EnergyCheck;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;

/** Reads and writes one entry of a log. Beside its time it has a key that tells what it is. */
final class LogEntryForm {
  private static final String AT = "at: \"2026-12-03T09:34:10+01:00\"";
  private static final Keys STARTED = Keys.of(AT, "started: \"weather-report\"", "planned: 10");
  private static final Keys ENDED = Keys.of(AT, "ended: \"weather-report\"");
  private static final Keys NOTE = Keys.of(AT, "note: \"Two people join by phone\"");
  private static final Keys DECISION = Keys.of(AT, "decision: \"We start with the second option\"");
  private static final Keys ENERGY = Keys.of(AT, "energy: 3");
  private static final Keys AGREED = Keys.of(AT, "agreed");
  private static final Keys UNDO = Keys.of(AT, "undo: true");

  /** Makes an entry of what stands beside its time. */
  private interface Reader {
    Optional<LogEntry> read(Fields fields, Optional<OffsetDateTime> at, Faults faults);
  }

  /** One way an entry may look: all its keys, and the one that only it has. */
  private record Shape(String sign, Keys keys, Reader reader) {}

  private static final List<Shape> SHAPES =
      List.of(
          new Shape("started", STARTED, LogEntryForm::started),
          worded("ended", ENDED, Ended::new),
          worded("note", NOTE, Note::new),
          worded("decision", DECISION, Decision::new),
          new Shape("agreed", AGREED, LogEntryForm::agreed),
          new Shape("energy", ENERGY, LogEntryForm::energy),
          new Shape("undo", UNDO, LogEntryForm::undo));

  private LogEntryForm() {}

  static Optional<LogEntry> read(Node node, Faults faults) {
    for (Shape shape : SHAPES) {
      if (node instanceof Mapping mapping && mapping.find(shape.sign()).isPresent()) {
        Fields fields = Fields.of(node, "entry", shape.keys(), faults);
        return shape.reader().read(fields, at(fields, faults), faults);
      }
    }
    String signs = String.join(", ", SHAPES.stream().map(Shape::sign).toList());
    faults.add(node, "entry", "beside \"at\" goes one of " + signs);
    return Optional.empty();
  }

  private static Optional<OffsetDateTime> at(Fields fields, Faults faults) {
    Optional<Node> node = fields.required("at");
    try {
      return node.flatMap(n -> Values.text(n, "at", faults)).map(OffsetDateTime::parse);
    } catch (DateTimeException e) {
      faults.add(
          node.orElseThrow(),
          "at",
          "write date, time and offset, such as 2026-12-03T09:34:10+01:00");
      return Optional.empty();
    }
  }

  private static Optional<LogEntry> started(
      Fields fields, Optional<OffsetDateTime> at, Faults faults) {
    String item = fields.text("started");
    Optional<Duration> planned =
        fields.optional("planned").flatMap(n -> Times.minutes(n, "planned", faults));
    return fields.build(() -> new Started(at.orElseThrow(), item, planned));
  }

  /** An entry that is a text beside its time. */
  private static Shape worded(
      String sign, Keys keys, BiFunction<OffsetDateTime, String, LogEntry> entry) {
    return new Shape(
        sign,
        keys,
        (fields, at, faults) -> {
          String text = fields.text(sign);
          return fields.build(() -> entry.apply(at.orElseThrow(), text));
        });
  }

  private static Optional<LogEntry> agreed(
      Fields fields, Optional<OffsetDateTime> at, Faults faults) {
    Optional<Agenda> plan = fields.required("agreed").flatMap(n -> AgendaReader.read(n, faults));
    return fields.build(() -> new Agreed(at.orElseThrow(), plan.orElseThrow()));
  }

  private static Optional<LogEntry> energy(
      Fields fields, Optional<OffsetDateTime> at, Faults faults) {
    int level = fields.whole("energy");
    return fields.build(() -> new EnergyCheck(at.orElseThrow(), level));
  }

  private static Optional<LogEntry> undo(
      Fields fields, Optional<OffsetDateTime> at, Faults faults) {
    Optional<Node> flag = fields.required("undo");
    if (flag.isPresent() && !Values.flag(flag.get(), "undo", faults).orElse(true)) {
      faults.add(flag.get(), "undo", "true is right; strike the line if nothing is undone");
    }
    return fields.build(() -> new Undo(at.orElseThrow()));
  }

  static Node tree(LogEntry entry) {
    Branch branch =
        new Branch().put("at", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(entry.at()));
    if (entry instanceof Started started) {
      branch.put("started", started.item());
      started.planned().ifPresent(planned -> branch.put("planned", Times.minutes(planned)));
    } else if (entry instanceof Ended ended) {
      branch.put("ended", ended.item());
    } else if (entry instanceof Note note) {
      branch.put("note", note.text());
    } else if (entry instanceof Decision decision) {
      branch.put("decision", decision.text());
    } else if (entry instanceof EnergyCheck check) {
      branch.put("energy", check.level());
    } else if (entry instanceof Agreed agreed) {
      branch.put("agreed", AgendaWriter.tree(agreed.plan()).end());
    } else if (entry instanceof Undo) {
      branch.put("undo", true);
    }
    return branch.end();
  }
}
