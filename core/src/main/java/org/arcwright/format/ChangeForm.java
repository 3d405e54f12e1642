package org.arcwright.format;

import java.time.Duration;
import java.util.Optional;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.live.Change;
import org.arcwright.live.Change.Added;
import org.arcwright.live.Change.Closed;
import org.arcwright.live.Change.LeftOut;
import org.arcwright.live.Change.Moved;
import org.arcwright.live.Change.Resized;

/** Reads and writes a change of a day: what kind it is, and the times that go with that kind. */
final class ChangeForm {
  private static final Keys KEYS =
      Keys.of(
          "change: \"resized\"",
          "exercise: \"dot-voting\"",
          "title: \"Dot voting\"",
          "by: 105",
          "start: 110",
          "length: 20",
          "from: 15",
          "to: 10");

  /** The kinds of change. */
  enum Kind implements Word {
    CLOSED("closed"),
    RESIZED("resized"),
    LEFT_OUT("left-out"),
    ADDED("added"),
    MOVED("moved");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private ChangeForm() {}

  static Optional<Change> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "change", KEYS, faults);
    Kind kind = fields.word(Kind.class, "change");
    String id = fields.text("exercise");
    String title = fields.text("title");
    if (fields.isFaulty("change")) {
      return Optional.empty();
    }
    return switch (kind) {
      case CLOSED -> {
        Duration by = time(fields, "by", faults);
        yield fields.build(() -> new Closed(id, title, by));
      }
      case RESIZED -> {
        Duration from = time(fields, "from", faults);
        Duration to = time(fields, "to", faults);
        yield fields.build(() -> new Resized(id, title, from, to));
      }
      case LEFT_OUT -> {
        Duration length = time(fields, "length", faults);
        yield fields.build(() -> new LeftOut(id, title, length));
      }
      case ADDED -> {
        Duration start = time(fields, "start", faults);
        Duration length = time(fields, "length", faults);
        yield fields.build(() -> new Added(id, title, start, length));
      }
      case MOVED -> {
        Duration from = time(fields, "from", faults);
        Duration to = time(fields, "to", faults);
        yield fields.build(() -> new Moved(id, title, from, to));
      }
    };
  }

  private static Duration time(Fields fields, String key, Faults faults) {
    return fields.required(key).flatMap(n -> Times.minutes(n, key, faults)).orElse(Duration.ZERO);
  }

  static Node tree(Change change) {
    if (change instanceof Closed closed) {
      return begin(Kind.CLOSED, change).put("by", Times.minutes(closed.by())).end();
    } else if (change instanceof Resized resized) {
      return begin(Kind.RESIZED, change)
          .put("from", Times.minutes(resized.from()))
          .put("to", Times.minutes(resized.to()))
          .end();
    } else if (change instanceof LeftOut out) {
      return begin(Kind.LEFT_OUT, change).put("length", Times.minutes(out.length())).end();
    } else if (change instanceof Added added) {
      return begin(Kind.ADDED, change)
          .put("start", Times.minutes(added.start()))
          .put("length", Times.minutes(added.length()))
          .end();
    }
    Moved moved = (Moved) change;
    return begin(Kind.MOVED, change)
        .put("from", Times.minutes(moved.from()))
        .put("to", Times.minutes(moved.to()))
        .end();
  }

  private static Branch begin(Kind kind, Change change) {
    return new Branch()
        .put("change", kind.word())
        .put("exercise", change.exercise())
        .put("title", change.title());
  }
}
