package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;

/** Says where the breaks fall, and why there. */
final class BreakReasons {
  private final Answer answer;
  private final List<AgendaItem> items;
  private final int longest;
  private final List<String> sentences = new ArrayList<>();

  private BreakReasons(Answer answer) {
    this.answer = answer;
    this.items = answer.agenda().items();
    this.longest = answer.instance().stretch().max();
  }

  static List<String> sentences(Answer answer) {
    BreakReasons reasons = new BreakReasons(answer);
    reasons.say();
    return reasons.sentences;
  }

  private void say() {
    if (answer.pauses().isEmpty()) {
      sentences.add(
          "No break: "
              + Words.time(answer.exerciseMinutes())
              + " in a row stay within the "
              + Words.time(longest)
              + " that people work without one here.");
      return;
    }
    for (int i = 1; i < items.size(); i++) {
      if (items.get(i) instanceof Pause pause) {
        sentences.add(pause.meal() ? meal(pause, i) : ordinary(pause, i));
      }
    }
  }

  private String meal(Pause pause, int at) {
    return "The meal "
        + answer.clock().said(pause.start())
        + " falls into the time you gave for it, after "
        + Words.time(stretch(at, -1))
        + " of work in a row.";
  }

  private String ordinary(Pause pause, int at) {
    int before = stretch(at, -1);
    String begin =
        "The break " + answer.clock().said(pause.start()) + " comes after " + Words.time(before);
    if (at + 1 < items.size() && items.get(at + 1) instanceof Activity next) {
      int without = before + Answer.minutes(next.length());
      if (without > longest) {
        return begin
            + ": "
            + Words.quoted(next.title())
            + " as well would make "
            + Words.time(without)
            + " in a row, and "
            + Words.time(longest)
            + " is the most here.";
      }
      if (items.get(at - 1) instanceof Activity last && last.format() == next.format()) {
        return begin
            + " and parts two pieces of work in the same format, "
            + Words.format(next.format())
            + ".";
      }
    }
    return begin + " and leaves " + Words.time(stretch(at, 1)) + " until people rest again.";
  }

  /** Exercise minutes in a row from an item on, forwards or backwards. */
  private int stretch(int from, int step) {
    int minutes = 0;
    for (int i = from + step; i >= 0 && i < items.size(); i += step) {
      if (items.get(i) instanceof Pause) {
        break;
      }
      minutes += Answer.minutes(items.get(i).length());
    }
    return minutes;
  }
}
