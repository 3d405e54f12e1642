package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.catalog.AtSize;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;

/** Exercises in rows, kind by kind. */
public final class ExerciseTable {
  private static final String GAP = "  ";

  private ExerciseTable() {}

  /**
   * The table as text; ends with a line break.
   *
   * @param exercises each as it is run with so many people
   * @param people whether all are for that many; else each is for a usual number of its own
   * @param of how many there are on the shelf
   */
  public static String write(
      List<AtSize> exercises,
      Optional<Integer> people,
      int of,
      Marks marks,
      Style style,
      int width) {
    Map<Kind, List<AtSize>> kinds = new EnumMap<>(Kind.class);
    for (AtSize sized : exercises) {
      kinds.computeIfAbsent(sized.exercise().kind(), kind -> new ArrayList<>()).add(sized);
    }
    int ids = exercises.stream().mapToInt(sized -> sized.exercise().id().length()).max().orElse(2);
    StringBuilder out = new StringBuilder();
    kinds.forEach(
        (kind, rows) -> {
          String name = Words.sentence(kind.word()) + " (" + rows.size() + ")";
          out.append(style.heading(Wrap.left(name, ids))).append(GAP);
          out.append(style.faint("people   minutes      energy open r p h  title")).append('\n');
          for (AtSize row : rows) {
            out.append(row(row, ids, marks.dash(), width)).append('\n');
          }
          out.append('\n');
        });
    String size =
        people
            .map(count -> "Minutes for " + ShelfWords.people(count))
            .orElse(
                "Minutes for 12 people, or for the number nearest to it that an exercise serves");
    String legend =
        size
            + ": usual (shortest to longest). Energy from 1 calm to 5 lively, openness from 0 to 3. r p h: how it fits"
            + " remote, in person, hybrid, from 0 not possible to 3 at its best.";
    out.append(exercises.size()).append(" of ").append(of).append(" exercises.\n");
    Wrap.lines(legend, width).forEach(line -> out.append(style.faint(line)).append('\n'));
    return Words.untied(out.toString());
  }

  private static String row(AtSize row, int ids, char dash, int width) {
    Exercise exercise = row.exercise();
    StringBuilder line = new StringBuilder();
    line.append(Wrap.left(exercise.id(), ids)).append(GAP);
    line.append(Wrap.left(ShelfWords.people(exercise.people(), dash), 7)).append(GAP);
    line.append(Wrap.left(ShelfWords.narrow(row.minutes(), dash), 12)).append(' ');
    line.append(exercise.energy()).append("      ");
    line.append(exercise.openness()).append("    ");
    for (Mode mode : Mode.values()) {
      line.append(exercise.in(mode).fit()).append(' ');
    }
    line.append(' ');
    int left = width - line.length();
    return left < 8 ? line.toString().stripTrailing() : line + cut(exercise.title(), left);
  }

  private static String cut(String text, int width) {
    return text.length() <= width ? text : text.substring(0, width - 3).stripTrailing() + "...";
  }
}
