package org.arcwright.vote;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/** The checks that the two matrices share. */
final class Matrices {
  private Matrices() {}

  static List<String> criteria(List<String> names) {
    return Ballots.names("criteria", names, 1, 50);
  }

  /** Returns a copy; refuses a row or a cell too few or too many, and values out of range. */
  static List<List<Integer>> cells(
      List<String> options, int criteria, List<List<Integer>> rows, int least, int most) {
    if (rows.size() != options.size()) {
      throw new InvalidValueException(
          "rows", rows.size(), "the table has a row for each of " + options.size() + " options");
    }
    List<List<Integer>> copy = new ArrayList<>(rows.size());
    for (List<Integer> row : rows) {
      String option = options.get(copy.size());
      if (row.size() != criteria) {
        throw new InvalidValueException(
            "row of " + option,
            row.size() + " marks",
            "it needs one for each of " + criteria + " criteria");
      }
      row.forEach(mark -> Checks.range("mark of " + option, mark, least, most));
      copy.add(List.copyOf(row));
    }
    return List.copyOf(copy);
  }
}
