package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.forecast.Forecast;

/**
 * The fan of a forecast in characters: planned time runs left to right, minutes behind the plan
 * bottom to top. The inner band is where the day is in three of five cases, the outer one in nine
 * of ten; the line of the close stands as high as what is kept free.
 */
final class FanStrip {
  private static final int LABEL = 10;
  private static final int MOST_ROWS = 9;

  private final Agenda agenda;
  private final Fan fan;
  private final Marks marks;
  private final TimeAxis axis;
  private final int step;
  private final int lowest;
  private final char[][] rows;

  private FanStrip(Forecast forecast, Marks marks, int width) {
    int columns = Math.max(20, width - LABEL - 1);
    this.agenda = forecast.agenda();
    this.fan = Fan.of(forecast);
    this.marks = marks;
    this.axis = new TimeAxis(agenda, columns);
    this.step = Fan.step(fan.most() - fan.least(), MOST_ROWS - 2);
    this.lowest = row(fan.least());
    this.rows = new char[row(fan.most()) - lowest + 1][columns];
    for (char[] row : rows) {
      Arrays.fill(row, ' ');
    }
  }

  /** The picture with its axis and its legend, no line wider than {@code width}. */
  static List<String> draw(Forecast forecast, Marks marks, int width) {
    return new FanStrip(forecast, marks, width).lines(width);
  }

  private List<String> lines(int width) {
    drawPlan();
    drawFan();
    List<String> lines = new ArrayList<>();
    for (int row = rows.length - 1; row >= 0; row--) {
      lines.add((label(row) + new String(rows[row])).stripTrailing());
    }
    lines.add(" ".repeat(LABEL) + marks.corner() + numbered(axis.ground(marks)));
    lines.add(" ".repeat(LABEL + 1) + axis.labels());
    String legend =
        entry(marks.curve(), "as likely earlier as later")
            + entry(marks.inner(), "3 days of 5")
            + entry(marks.outer(), "9 days of 10")
            + entry(marks.open(), "kept free");
    for (String line : Wrap.hanging(" ".repeat(LABEL + 1), legend.strip(), width)) {
      lines.add(Words.untied(line));
    }
    return lines;
  }

  /** What a mark means, on one line. */
  private static String entry(char mark, String meaning) {
    return Words.tied(mark + " " + meaning + "  ") + " ";
  }

  /** The plan itself, and the promised end behind it. */
  private void drawPlan() {
    int close = Math.min(rows[0].length, axis.column(agenda.end()));
    Arrays.fill(rows[row(0) - lowest], 0, close, marks.ground());
    Arrays.fill(rows[row(fan.slack()) - lowest], close, rows[0].length, marks.open());
  }

  private void drawFan() {
    for (int column = 0; column < rows[0].length; column++) {
      double minute = axis.minute(column);
      if (minute >= Answer.minutes(agenda.end())) {
        return;
      }
      double[] late = fan.at(minute);
      fill(column, late[0], late[4], marks.outer());
      fill(column, late[1], late[3], marks.inner());
      fill(column, late[Fan.MIDDLE], late[Fan.MIDDLE], marks.curve());
    }
  }

  private void fill(int column, double from, double to, char mark) {
    for (int row = row(from); row <= row(to); row++) {
      rows[row - lowest][column] = mark;
    }
  }

  /** The row that is nearest to so many minutes. */
  private int row(double late) {
    return (int) Math.round(late / step);
  }

  private String label(int row) {
    int minutes = (row + lowest) * step;
    String text = minutes == 0 ? "on plan" : Math.abs(minutes) + (minutes > 0 ? " late" : " early");
    return " ".repeat(Math.max(0, LABEL - 1 - text.length())) + text + " " + marks.level();
  }

  /** Each exercise's number where it starts, as in the agenda. */
  private String numbered(String ground) {
    char[] line = Arrays.copyOf(ground.toCharArray(), Math.max(ground.length(), 1));
    int number = 0;
    for (Activity activity : agenda.activities()) {
      String text = String.valueOf(++number);
      int from = axis.column(activity.start());
      if (text.length() < axis.endColumn(activity) - from) {
        text.getChars(0, text.length(), line, from);
      }
    }
    return new String(line);
  }
}
