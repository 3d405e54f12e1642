package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Kind;

/**
 * The small picture of an agenda: time runs left to right, energy bottom to top in half levels. The
 * target curve is a dotted line; each exercise is a bar as wide as it lasts and as high as its
 * energy, filled by its kind; a break is a gap in the ground line, and the closing buffer is open.
 */
final class EnergyStrip {
  private static final int LABEL = 9;
  private static final int TENTHS_A_ROW = 5;
  private static final int CALM = 10;

  /** Least top of the picture, so that calm agendas look calm. */
  private static final int USUAL_TOP = 40;

  private static final String BETWEEN = "   ";

  private final Agenda agenda;
  private final Marks marks;
  private final int columns;
  private final TimeAxis axis;
  private final char[][] rows;

  private EnergyStrip(Agenda agenda, Marks marks, int width) {
    this.agenda = agenda;
    this.marks = marks;
    this.columns = Math.max(20, width - LABEL - 1);
    this.axis = new TimeAxis(agenda, columns);
    int top = USUAL_TOP;
    for (Activity activity : agenda.activities()) {
      top = Math.max(top, activity.energy());
    }
    for (int tenths : agenda.curve()) {
      top = Math.max(top, tenths);
    }
    this.rows = new char[row(top) + 1][columns];
    for (char[] row : rows) {
      Arrays.fill(row, ' ');
    }
  }

  /** The picture with its axis and its legend, no line wider than {@code width}. */
  static List<String> draw(Agenda agenda, Marks marks, int width) {
    return new EnergyStrip(agenda, marks, width).lines();
  }

  private List<String> lines() {
    drawBars();
    drawCurve();
    drawNumbers();
    List<String> lines = new ArrayList<>();
    for (int row = rows.length - 1; row >= 0; row--) {
      lines.add((label(row) + new String(rows[row])).stripTrailing());
    }
    lines.add(" ".repeat(LABEL) + marks.corner() + axis.ground(marks));
    lines.add(" ".repeat(LABEL + 1) + axis.labels());
    addLegend(lines);
    return lines;
  }

  private void drawBars() {
    for (Activity activity : agenda.activities()) {
      char fill = marks.fill(activity.kind());
      for (int row = 0; row <= row(activity.energy()); row++) {
        Arrays.fill(rows[row], axis.column(activity.start()), axis.endColumn(activity), fill);
      }
    }
  }

  private void drawCurve() {
    List<Integer> curve = agenda.curve();
    for (int column = 1; column < columns; column += 2) {
      int cell = (int) ((2L * column + 1) * curve.size() / (2L * columns));
      rows[row(curve.get(cell))][column] = marks.curve();
    }
  }

  /** Each bar's number in the agenda, at its foot, where it has room apart from its neighbour's. */
  private void drawNumbers() {
    int number = 0;
    for (Activity activity : agenda.activities()) {
      String text = String.valueOf(++number);
      int from = axis.column(activity.start());
      int room = axis.endColumn(activity) - from;
      if (text.length() < room || (room == 1 && text.length() == 1)) {
        text.getChars(0, text.length(), rows[0], from);
      }
    }
  }

  /** What fills and lines mean, as far as they occur. */
  private void addLegend(List<String> lines) {
    StringBuilder line = new StringBuilder(" ".repeat(LABEL + 1));
    for (String entry : legend(agenda, marks)) {
      if (line.length() + BETWEEN.length() + entry.length() > LABEL + 1 + columns) {
        lines.add(line.toString());
        line.setLength(LABEL + 1);
      }
      line.append(line.length() == LABEL + 1 ? "" : BETWEEN).append(entry);
    }
    lines.add(line.toString());
  }

  private static List<String> legend(Agenda agenda, Marks marks) {
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    boolean own = false;
    for (Activity activity : agenda.activities()) {
      activity.kind().ifPresent(kinds::add);
      own |= activity.kind().isEmpty();
    }
    List<String> entries = new ArrayList<>();
    entries.add(marks.curve() + " energy wished for");
    for (Kind kind : kinds) {
      entries.add(marks.fill(Optional.of(kind)) + " " + kind.word());
    }
    if (own) {
      entries.add(marks.fill(Optional.empty()) + " own item");
    }
    if (!agenda.buffer().isZero()) {
      entries.add(marks.open() + " kept free");
    }
    return entries;
  }

  private String label(int row) {
    int tenths = CALM + row * TENTHS_A_ROW;
    String text;
    if (tenths % 10 != 0) {
      return " ".repeat(LABEL) + marks.wall();
    } else if (tenths + 10 > CALM + (rows.length - 1) * TENTHS_A_ROW) {
      text = "energy " + tenths / 10;
    } else {
      text = (row == 0 ? "calm " : "") + tenths / 10;
    }
    return " ".repeat(LABEL - 1 - text.length()) + text + " " + marks.level();
  }

  private static int row(int tenths) {
    return (tenths - CALM + TENTHS_A_ROW / 2) / TENTHS_A_ROW;
  }
}
