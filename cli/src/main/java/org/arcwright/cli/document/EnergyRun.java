package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.cli.words.Language;

/** Says how energy runs, and where it is furthest from the curve. */
final class EnergyRun {
  /**
   * Minutes times tenths under which a distance is not worth a sentence: ten minutes, one level.
   */
  private static final int WORTH_SAYING = 100;

  private EnergyRun() {}

  static List<String> sentences(Answer answer, Language language) {
    List<String> sentences = new ArrayList<>();
    sentences.add(course(answer, language));
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
      sentences.add(furthest(answer, furthest, language));
    }
    return sentences;
  }

  private static String course(Answer answer, Language language) {
    List<Activity> activities = answer.agenda().activities();
    Activity first = activities.get(0);
    Activity last = activities.get(activities.size() - 1);
    Activity liveliest = first;
    for (Activity activity : activities) {
      if (activity.energy() > liveliest.energy()) {
        liveliest = activity;
      }
    }
    String start = language.level(first.energy());
    String end = language.level(last.energy());
    int fit = answer.agenda().figures().energyFit();
    return liveliest.energy() == first.energy()
        ? language.say("why.energy", start, end, fit)
        : language.say(
            "why.energy.peak",
            start,
            end,
            fit,
            answer.clock().said(liveliest.start(), language),
            liveliest.title(),
            language.level(liveliest.energy()));
  }

  private static String furthest(Answer answer, Activity activity, Language language) {
    int minutes = Answer.minutes(activity.length());
    int off = off(answer, activity);
    int tenths = (Math.abs(off) + minutes / 2) / minutes;
    return language.say(
        off > 0 ? "why.livelier" : "why.calmer",
        activity.title(),
        language.minutes(minutes),
        tenths / 10.0,
        language.level(tenths));
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
