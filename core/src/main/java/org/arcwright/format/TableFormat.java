package org.arcwright.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Nearest;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;

/**
 * Exercises as a table, for those who keep a catalog in a spreadsheet: a row each, all that an
 * exercise holds in columns, and cells that people can read and type. Whoever uses this brings the
 * form of the file, such as CSV; here are rows of cells.
 *
 * <p>Lists of ids are written {@code idea-pool, items}; lists of lines have a line each; steps have
 * a line each, such as {@code [4-5-6 min x 3 rounds, nobody, small-groups] Everybody writes.} In
 * such lines {@code \n} stands for a line break within and {@code \\} for a backslash.
 */
public final class TableFormat {
  private TableFormat() {}

  /** The columns' names, in order. */
  public static List<String> header() {
    return Column.ALL.stream().map(Column::name).toList();
  }

  /** The exercise's cells, in the order of {@link #header}; what it does not have is empty. */
  public static List<String> row(Exercise exercise) {
    Node tree = ExerciseWriter.tree(exercise);
    return Column.ALL.stream().map(column -> column.cell(tree)).toList();
  }

  /**
   * Reads exercises from rows. Columns may stand in any order; those that no row needs may be left
   * out; empty rows are passed over. Linear in the size of the table.
   *
   * @param name where they come from, for messages
   * @param rows the header and a row for each exercise; lines and columns of problems count rows
   *     and cells from 1
   * @param words the catalog whose work products and tools they may use
   * @throws FormatException with all that is wrong
   */
  public static List<Exercise> read(String name, List<List<String>> rows, Catalog words) {
    Faults faults = new Faults();
    List<Exercise> exercises = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    Map<Integer, Column> columns = columns(rows, faults);
    boolean readable = faults.count() == 0;
    for (int i = 1; readable && i < rows.size(); i++) {
      if (!rows.get(i).stream().allMatch(String::isBlank)) {
        int line = i + 1;
        TableRow row = new TableRow(line, rows.get(i), columns, faults);
        row.read(Vocabulary.of(words))
            .ifPresent(
                exercise -> {
                  Integer before = seen.putIfAbsent(exercise.id(), line);
                  if (before == null) {
                    exercises.add(exercise);
                  } else {
                    row.refuse("id", "row " + before + " has it already; rename one");
                  }
                });
      }
    }
    if (faults.count() > 0) {
      throw new FormatException(problems(name, faults));
    }
    return exercises;
  }

  private static Map<Integer, Column> columns(List<List<String>> rows, Faults faults) {
    Map<Integer, Column> columns = new LinkedHashMap<>();
    if (rows.isEmpty()) {
      faults.add(1, 1, "empty table", "", "its first row names the columns");
      return columns;
    }
    Map<String, Integer> seen = new HashMap<>();
    List<String> header = rows.get(0);
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).strip().toLowerCase(Locale.ROOT);
      Optional<Column> column = Column.named(name);
      if (column.isEmpty()) {
        faults.add(1, i + 1, "unknown column", header.get(i), known(name));
      } else if (seen.putIfAbsent(name, i + 1) != null) {
        faults.add(1, i + 1, "column twice", name, "it is column " + seen.get(name) + " already");
      } else {
        columns.put(i, column.get());
      }
    }
    List<String> missing =
        Column.ALL.stream()
            .filter(column -> column.required() && !columns.containsValue(column))
            .map(Column::name)
            .toList();
    if (missing.size() == 1) {
      faults.add(1, 1, "missing column", missing.get(0), "add it to the first row");
    } else if (!missing.isEmpty()) {
      faults.add(
          1,
          1,
          "missing columns",
          String.valueOf(missing.size()),
          "add to the first row: " + String.join(", ", missing));
    }
    return columns;
  }

  private static String known(String name) {
    return Nearest.to(name, header())
        .map(near -> "perhaps " + near)
        .orElse("the columns are " + String.join(", ", header()));
  }

  private static List<Problem> problems(String name, Faults faults) {
    List<Problem> problems = new ArrayList<>();
    for (Fault fault : faults.list()) {
      problems.add(
          new Problem(
              new Place(name, fault.line(), fault.column()),
              fault.what(),
              fault.value(),
              fault.remedy()));
    }
    return problems;
  }
}
