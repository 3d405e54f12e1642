package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;

/**
 * A column of a table of exercises.
 *
 * @param name in the header
 * @param path of its value in an exercise, with points between the keys
 * @param form how its cells write the value
 * @param required whether each exercise needs a value there
 */
record Column(String name, String path, CellForm form, boolean required) {
  static final List<Column> ALL =
      List.of(
          required("id", CellForm.TEXT),
          required("title", CellForm.TEXT),
          required("kind", CellForm.TEXT),
          required("purpose", CellForm.TEXT),
          new Column("people-min", "people.min", CellForm.WHOLE, true),
          new Column("people-max", "people.max", CellForm.WHOLE, true),
          new Column("breakout-min", "breakout.min", CellForm.WHOLE, false),
          new Column("breakout-max", "breakout.max", CellForm.WHOLE, false),
          required("energy", CellForm.WHOLE),
          required("openness", CellForm.WHOLE),
          optional("moves", CellForm.FLAG),
          optional("needs", CellForm.IDS),
          required("yields", CellForm.IDS),
          required("opening", CellForm.TEXT),
          required("steps", CellForm.STEPS),
          mode("remote", "fit", CellForm.WHOLE),
          mode("remote", "tools", CellForm.IDS),
          mode("remote", "how", CellForm.TEXT),
          mode("in-person", "fit", CellForm.WHOLE),
          mode("in-person", "tools", CellForm.IDS),
          mode("in-person", "how", CellForm.TEXT),
          mode("hybrid", "fit", CellForm.WHOLE),
          mode("hybrid", "tools", CellForm.IDS),
          mode("hybrid", "how", CellForm.TEXT),
          optional("materials", CellForm.LINES),
          optional("cautions", CellForm.LINES),
          optional("opt-out", CellForm.TEXT),
          required("watch", CellForm.LINES),
          required("access", CellForm.LINES),
          required("carry-over", CellForm.TEXT),
          optional("tips", CellForm.LINES),
          new Column("source", "source.mark", CellForm.TEXT, true),
          new Column("cite", "source.cite", CellForm.TEXT, false));

  private static Column required(String name, CellForm form) {
    return new Column(name, name, form, true);
  }

  private static Column optional(String name, CellForm form) {
    return new Column(name, name, form, false);
  }

  private static Column mode(String mode, String key, CellForm form) {
    return new Column(mode + "-" + key, "modes." + mode + "." + key, form, true);
  }

  static Optional<Column> named(String name) {
    return ALL.stream().filter(column -> column.name.equals(name)).findFirst();
  }

  /** The keys that lead to its value. */
  List<String> keys() {
    return List.of(path.split("\\."));
  }

  /** The last of its keys: what a reader calls it. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** The column whose value stands beside this one's, under another key. */
  Optional<Column> beside(String other) {
    String sibling = path.substring(0, path.length() - key().length()) + other;
    return ALL.stream().filter(column -> column.path.equals(sibling)).findFirst();
  }

  /** Its cell for an exercise; empty if the exercise has no such value. */
  String cell(Node exercise) {
    Optional<Node> value = Optional.of(exercise);
    for (String key : keys()) {
      value =
          value.flatMap(
              node ->
                  node instanceof Mapping mapping
                      ? mapping.find(key).map(Member::value)
                      : Optional.empty());
    }
    return value.map(form::write).orElse("");
  }
}
