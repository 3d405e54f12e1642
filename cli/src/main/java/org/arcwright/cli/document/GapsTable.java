package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.Catalog;
import org.arcwright.gaps.Cell;
import org.arcwright.gaps.Count;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.Grid;
import org.arcwright.gaps.ToolSet;

/**
 * The counts of a grid in rows: a row for each goal, a group of figures for each number of people,
 * a figure for each length. Where there are enough agendas a dot stands, so that the figures are
 * what one sees.
 */
final class GapsTable {
  private static final String PEOPLE = "people";

  private final Gaps gaps;
  private final Grid grid;
  private final Marks marks;
  private final Style style;
  private final Map<Cell, Count> counts = new HashMap<>();
  private final StringBuilder out;

  private GapsTable(Gaps gaps, Marks marks, Style style, StringBuilder out) {
    this.gaps = gaps;
    this.grid = gaps.grid();
    this.marks = marks;
    this.style = style;
    this.out = out;
    gaps.counts().forEach(count -> counts.put(count.cell(), count));
  }

  static void write(
      Gaps gaps, Catalog catalog, Marks marks, Style style, int width, StringBuilder out) {
    GapsTable table = new GapsTable(gaps, marks, style, out);
    String key =
        "How many different agendas there are: "
            + table.enough()
            + " stands for "
            + gaps.most()
            + " or more."
            + (gaps.grid().lengths().size() == 1
                ? ""
                : " Behind each other: " + GapWords.lengths(gaps.grid().lengths()) + ".");
    Wrap.lines(key, width).forEach(line -> out.append(line).append('\n'));
    for (ToolSet set : gaps.grid().tools()) {
      out.append('\n')
          .append(style.heading(Words.sentence(GapWords.place(set, catalog))))
          .append('\n');
      table.block(set, width);
    }
  }

  private char enough() {
    return marks.curve();
  }

  private void block(ToolSet set, int width) {
    int names =
        Math.max(PEOPLE.length(), grid.goals().stream().mapToInt(String::length).max().orElse(0));
    int figures = Math.max(grid.lengths().size(), 3);
    int fit = Math.max(1, (width - names) / (figures + 1));
    for (int from = 0; from < grid.people().size(); from += fit) {
      List<Integer> people =
          grid.people().subList(from, Math.min(from + fit, grid.people().size()));
      StringBuilder head = new StringBuilder(Wrap.left(PEOPLE, names));
      people.forEach(count -> head.append(' ').append(Wrap.left(String.valueOf(count), figures)));
      out.append(style.faint(head.toString().stripTrailing())).append('\n');
      for (String goal : grid.goals()) {
        StringBuilder row = new StringBuilder(Wrap.left(goal, names));
        people.forEach(
            count -> row.append(' ').append(Wrap.left(figures(goal, set, count), figures)));
        out.append(row.toString().stripTrailing()).append('\n');
      }
    }
  }

  private String figures(String goal, ToolSet set, int people) {
    List<String> figures = new ArrayList<>();
    grid.lengths().forEach(length -> figures.add(figure(new Cell(goal, set, people, length))));
    return String.join("", figures);
  }

  private String figure(Cell cell) {
    Count count = counts.get(cell);
    if (count == null || gaps.isOpen(count)) {
      return "?";
    }
    return count.agendas() >= gaps.most()
        ? String.valueOf(enough())
        : String.valueOf(Math.min(9, count.agendas()));
  }
}
