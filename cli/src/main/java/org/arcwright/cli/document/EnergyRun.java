package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;

/** Says how energy runs, and where it is furthest from the curve. */
final class EnergyRun {
  /**
   * Minutes times tenths under which a distance is not worth a sentence: ten minutes, one level.
   */
  private static final int WORTH_SAYING = 100;

  private EnergyRun() {}

  static List<String> sentences(Answer answer) {
    List<String> sentences = new ArrayList<>();
    sentences.add(course(answer));
    Activity furthest = null;
    int most = 0;
    for (Activity activity : answer.agenda().activities()) {
      int distance = Math.abs(off(answer, activity));
      if (distance > most) {
        most = distance;
        furthest = activity;
      }
    }
    if (furthest != null && most >= WORTH_SAYING) {
      sentences.add(furthest(answer, furthest));
    }
    return sentences;
  }

  private static String course(Answer answer) {
    List<Activity> activities = answer.agenda().activities();
    Activity first = activities.get(0);
    Activity last = activities.get(activities.size() - 1);
    Activity liveliest = first;
    for (Activity activity : activities) {
      if (activity.energy() > liveliest.energy()) {
        liveliest = activity;
      }
    }
    String peak =
        liveliest.energy() == first.energy()
            ? ""
            : ", is liveliest "
                + answer.clock().said(liveliest.start())
                + " in "
                + Words.quoted(liveliest.title())
                + " ("
                + Words.level(liveliest.energy())
                + ")";
    return "Energy starts at "
        + Words.level(first.energy())
        + " of 5"
        + peak
        + " and ends at "
        + Words.level(last.energy())
        + "; in all it keeps "
        + answer.agenda().figures().energyFit()
        + " % to the curve.";
  }

  private static String furthest(Answer answer, Activity activity) {
    int minutes = Answer.minutes(activity.length());
    int off = off(answer, activity);
    int tenths = (Math.abs(off) + minutes / 2) / minutes;
    return "Furthest from it is "
        + Words.quoted(activity.title())
        + ": "
        + minutes
        + " min, on average "
        + (tenths == 10 ? "a level " : Words.level(tenths) + " levels ")
        + (off > 0 ? "livelier" : "calmer")
        + " than wished for.";
  }

  /** Tenths over (or, negative, under) the curve, summed over the activity's minutes. */
  private static int off(Answer answer, Activity activity) {
    int sum = 0;
    int end = Answer.minutes(activity.end());
    for (int minute = Answer.minutes(activity.start()); minute < end; minute++) {
      sum += activity.energy() - answer.curveAt(minute);
    }
    return sum;
  }
}
