package org.arcwright.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.catalog.Exercise;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;

/** One row of a table, on its way to an exercise: its cells become a tree, as a file would. */
final class TableRow {
  private final int line;
  private final List<String> cells;
  private final Map<Integer, Column> columns;
  private final Faults faults;

  TableRow(int line, List<String> cells, Map<Integer, Column> columns, Faults faults) {
    this.line = line;
    this.cells = cells;
    this.columns = columns;
    this.faults = faults;
  }

  Optional<Exercise> read(Vocabulary vocabulary) {
    for (int i = 0; i < cells.size(); i++) {
      if (!columns.containsKey(i) && !cells.get(i).isBlank()) {
        faults.add(line, i + 1, "cell without a column", cells.get(i), "name it in the first row");
      }
    }
    Faults own = new Faults();
    List<Value> values = new ArrayList<>();
    columns.forEach(
        (index, column) -> {
          String cell = index < cells.size() ? cells.get(index) : "";
          Node node = column.form().read(cell, line, index + 1, own);
          if (column.required() || !node.isNothing()) {
            values.add(new Value(column.keys(), node));
          }
        });
    Optional<Exercise> exercise = ExerciseReader.read(mapping(values), vocabulary, own);
    own.list().forEach(this::add);
    return own.count() == 0 ? exercise : Optional.empty();
  }

  /** Adds a fault about the value of a column. */
  void refuse(String column, String remedy) {
    int index = index(column);
    faults.add(line, index + 1, column, cells.get(index), remedy);
  }

  /** Where the column stands; the first place if it does not. */
  private int index(String column) {
    return columns.entrySet().stream()
        .filter(entry -> entry.getValue().name().equals(column))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(0);
  }

  /** A reader's fault in the words of a table: columns and cells instead of keys and values. */
  private void add(Fault fault) {
    Optional<Column> column = Optional.ofNullable(columns.get(fault.column() - 1));
    Optional<Column> empty =
        switch (fault.what()) {
          case "key without a value" -> column;
          case "missing key" -> column.flatMap(beside -> beside.beside(fault.value()));
          default -> Optional.empty();
        };
    if (empty.isPresent()) {
      String name = empty.get().name();
      faults.add(line, index(name) + 1, "empty cell", name, "fill it in");
    } else {
      String what =
          column.filter(c -> c.key().equals(fault.what())).map(Column::name).orElse(fault.what());
      faults.add(line, fault.column(), what, fault.value(), fault.remedy());
    }
  }

  /** A value and the keys that lead to it. */
  private record Value(List<String> keys, Node node) {}

  private Mapping mapping(List<Value> values) {
    Map<String, List<Value>> inner = new LinkedHashMap<>();
    for (Value value : values) {
      inner.computeIfAbsent(value.keys().get(0), key -> new ArrayList<>()).add(value);
    }
    List<Member> members = new ArrayList<>();
    inner.forEach(
        (key, parts) -> {
          Value first = parts.get(0);
          Node node =
              first.keys().size() == 1
                  ? first.node()
                  : mapping(
                      parts.stream()
                          .map(part -> new Value(rest(part.keys()), part.node()))
                          .toList());
          members.add(new Member(line, first.node().column(), key, node));
        });
    int column = values.isEmpty() ? 1 : values.get(0).node().column();
    return new Mapping(line, column, members);
  }

  private static List<String> rest(List<String> keys) {
    return keys.subList(1, keys.size());
  }
}
