package org.arcwright.cli.document;

import java.time.Duration;
import java.util.Arrays;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;

/** Where the minutes of an agenda stand in a picture of characters, and the line below it. */
final class TimeAxis {
  private static final int[] TICK_MINUTES = {5, 10, 15, 30, 60, 120, 240};
  private static final int TICK_COLUMNS = 8;

  private final Agenda agenda;
  private final int columns;
  private final int cap;

  /**
   * @param columns for the whole time at hand
   */
  TimeAxis(Agenda agenda, int columns) {
    this.agenda = agenda;
    this.columns = columns;
    this.cap = Math.max(1, Answer.minutes(agenda.cap()));
  }

  /** The column in which a time stands; the last one is that of the end. */
  int column(Duration offset) {
    long minutes = Math.min(cap, offset.toMinutes());
    return (int) ((2 * minutes * columns + cap) / (2L * cap));
  }

  /** Where an item's columns end: it is a column wide at the least. */
  int endColumn(AgendaItem item) {
    return Math.min(columns, Math.max(column(item.start()) + 1, column(item.end())));
  }

  /** The minute in the middle of a column. */
  double minute(int column) {
    return (column + 0.5) * cap / columns;
  }

  /** The line on which exercises stand; breaks are gaps in it, and the close is open. */
  String ground(Marks marks) {
    char[] ground = new char[columns];
    Arrays.fill(ground, ' ');
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Activity) {
        Arrays.fill(ground, column(item.start()), endColumn(item), marks.ground());
      }
    }
    int close = column(agenda.end());
    Arrays.fill(ground, close, column(agenda.end().plus(agenda.buffer())), marks.open());
    return new String(ground).stripTrailing();
  }

  /** Times at even distances. */
  String labels() {
    Clock clock = new Clock(agenda.start());
    int step = tickMinutes();
    StringBuilder labels = new StringBuilder();
    for (int minute = 0; minute <= cap; minute += step) {
      Duration at = Duration.ofMinutes(minute);
      String label = clock.at(at);
      int column = column(at);
      if (column + label.length() > columns) {
        break;
      }
      labels.append(" ".repeat(column - labels.length())).append(label);
    }
    return labels.toString();
  }

  /** Minutes between two labels, so that they do not run into each other. */
  int tickMinutes() {
    for (int minutes : TICK_MINUTES) {
      if (minutes * columns / cap >= TICK_COLUMNS) {
        return minutes;
      }
    }
    return cap;
  }
}
