package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;

/** The agenda as rows of text: a heading for each phase, below it its exercises. */
final class AgendaTable {
  private static final int TIME = 11;
  private static final int MINUTES = 3;
  private static final int NUMBER = 2;
  private static final int KIND = 10;
  private static final int FORMAT = 12;
  private static final String GAP = "  ";

  private final Answer answer;
  private final Agenda agenda;
  private final Marks marks;
  private final Style style;
  private final int width;
  private final int titleWidth;
  private final List<String> lines = new ArrayList<>();

  private AgendaTable(Answer answer, Marks marks, Style style, int width) {
    this.answer = answer;
    this.agenda = answer.agenda();
    this.marks = marks;
    this.style = style;
    this.width = width;
    this.titleWidth = width - before().length() - 3 * GAP.length() - KIND - FORMAT - 1;
  }

  static List<String> lines(Answer answer, Marks marks, Style style, int width) {
    AgendaTable table = new AgendaTable(answer, marks, style, width);
    table.write();
    return table.lines;
  }

  private void write() {
    lines.add(style.faint(header()));
    Map<String, Integer> minutes = TimeSplit.minutesByPhase(agenda);
    String phase = "";
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Activity activity) {
        if (!activity.phase().equals(phase)) {
          phase = activity.phase();
          int spent = minutes.getOrDefault(phase, 0);
          lines.add(style.heading(answer.phaseTitle(phase)) + ", " + Words.time(spent));
        }
        activity(activity, ++number);
      } else if (item instanceof Pause pause) {
        row(pause.start(), pause.end(), "", "", pause.meal() ? "meal" : "break");
      }
    }
    Duration close = agenda.end();
    if (!agenda.buffer().isZero()) {
      Duration end = close.plus(agenda.buffer());
      row(close, end, "", String.valueOf(marks.open()), "kept free for what runs over");
      close = end;
    }
    if (answer.idleMinutes() > 0) {
      row(close, Duration.ofMinutes(answer.instance().cap()), "", "", "left over");
    }
  }

  private String header() {
    return Wrap.left(GAP + "time", GAP.length() + TIME)
        + GAP
        + Wrap.right("min", MINUTES)
        + Wrap.left("", NUMBER + 2 * GAP.length() + 2)
        + Wrap.left("what", titleWidth)
        + GAP
        + Wrap.left("kind", KIND)
        + GAP
        + "format";
  }

  private void activity(Activity activity, int number) {
    List<String> title = Wrap.lines(activity.title(), titleWidth);
    String first =
        Wrap.left(title.get(0), titleWidth)
            + GAP
            + Wrap.left(Words.kind(activity), KIND)
            + GAP
            + Words.format(activity.format());
    String fill = String.valueOf(marks.fill(activity.kind()));
    row(activity.start(), activity.end(), String.valueOf(number), fill, first);
    for (String more : title.subList(1, title.size())) {
      lines.add(before() + more);
    }
    answer
        .exercise(activity)
        .ifPresent(
            exercise ->
                Wrap.hanging(before(), exercise.purpose(), width)
                    .forEach(line -> lines.add(style.faint(line))));
  }

  private void row(Duration from, Duration to, String number, String mark, String text) {
    String time = answer.clock().at(from) + marks.dash() + answer.clock().at(to);
    lines.add(
        (GAP
                + Wrap.right(time, TIME)
                + GAP
                + Wrap.right(String.valueOf(to.minus(from).toMinutes()), MINUTES)
                + GAP
                + Wrap.right(number, NUMBER)
                + " "
                + Wrap.left(mark, 1)
                + " "
                + text)
            .stripTrailing());
  }

  /** The blanks before a title. */
  private static String before() {
    return " ".repeat(GAP.length() + TIME + GAP.length() + MINUTES + GAP.length() + NUMBER + 3);
  }
}
