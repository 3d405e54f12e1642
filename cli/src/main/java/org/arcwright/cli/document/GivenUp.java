package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.compose.Price;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;

/** What even this agenda had to give up: the parts of its cost, each said by what it stands for. */
final class GivenUp {
  private final Answer answer;
  private final Instance instance;
  private final List<Activity> activities;
  private final List<Loss> losses = new ArrayList<>();

  /**
   * A part of the cost.
   *
   * @param text what was given up
   * @param points what that counts
   */
  record Loss(String text, long points) {}

  private GivenUp(Answer answer) {
    this.answer = answer;
    this.instance = answer.instance();
    this.activities = answer.agenda().activities();
  }

  /** The parts over zero, largest first. */
  static List<Loss> losses(Answer answer) {
    GivenUp given = new GivenUp(answer);
    Cost cost = answer.agenda().figures().cost();
    given.add(cost.energy(), given::energy);
    given.add(cost.share(), given::share);
    given.exercises();
    given.add(cost.lengths(), given::lengths);
    given.add(cost.monotony(), given::monotony);
    given.add(cost.rhythm(), given::rhythm);
    given.add(cost.pauses(), given::pauses);
    given.add(cost.idle(), given::idle);
    given.losses.sort(Comparator.comparingLong(Loss::points).reversed());
    return given.losses;
  }

  /** What a point means. */
  static String unit(Answer answer) {
    int points = 100 * answer.instance().weights().energy();
    return Words.grouped(points) + " are as bad as ten minutes one energy level off";
  }

  private interface Said {
    String text();
  }

  private void add(long points, Said said) {
    if (points > 0) {
      losses.add(new Loss(said.text(), points));
    }
  }

  /** Exercises' own costs, one loss for each cause. */
  private void exercises() {
    Map<String, String> titles = new HashMap<>();
    activities.forEach(activity -> titles.put(activity.exercise(), Words.quoted(activity.title())));
    Map<String, List<Price>> byCause = new LinkedHashMap<>();
    for (Price price : answer.composed().prices()) {
      byCause.computeIfAbsent(price.why(), why -> new ArrayList<>()).add(price);
    }
    long exercises = activities.stream().filter(a -> answer.exercise(a).isPresent()).count();
    byCause.forEach(
        (why, prices) -> {
          List<String> which =
              prices.stream().map(price -> titles.getOrDefault(price.exercise(), "")).toList();
          boolean all = which.size() == exercises;
          losses.add(
              new Loss(
                  why + (all ? "" : ": " + Words.list(which)),
                  prices.stream().mapToLong(Price::points).sum()));
        });
  }

  private String energy() {
    long weighed = (long) answer.exerciseMinutes() * instance.weights().energy();
    long cost = answer.agenda().figures().cost().energy();
    int tenths = (int) ((cost + weighed / 2) / weighed);
    return tenths == 0
        ? "energy is a little off the curve"
        : "energy is " + Words.level(tenths) + " levels off the curve on average";
  }

  private String share() {
    Map<String, Integer> minutes = TimeSplit.minutesByPhase(answer.agenda());
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < instance.phases().size(); i++) {
      Instance.Phase phase = instance.phases().get(i);
      int over = minutes.getOrDefault(phase.name(), 0) - phase.target();
      if (over != 0) {
        parts.add(Words.quoted(answer.agenda().phases().get(i).title()) + " " + moreOrLess(over));
      }
    }
    return "phases differ from their share of the time: " + Words.list(parts);
  }

  private String lengths() {
    List<String> parts = new ArrayList<>();
    for (Activity activity : activities) {
      Candidate candidate = answer.candidate(activity);
      int minutes = Answer.minutes(activity.length());
      int at = candidate.lengths().indexOf(minutes);
      if (at >= 0 && candidate.lengthCosts().get(at) > 0) {
        int usual = candidate.lengthCosts().indexOf(0);
        parts.add(
            Words.quoted(activity.title())
                + (usual < 0
                    ? " less than usual"
                    : " " + moreOrLess(minutes - candidate.lengths().get(usual))));
      }
    }
    return "some exercises do not last as long as usual: " + Words.list(parts);
  }

  private String monotony() {
    List<String> parts = new ArrayList<>();
    for (int i = 1; i < activities.size(); i++) {
      Activity activity = activities.get(i);
      if (activities.get(i - 1).format() == activity.format()) {
        parts.add(
            Words.format(activity.format()) + " again " + answer.clock().said(activity.start()));
      }
    }
    return "the format stays the same: " + Words.list(parts);
  }

  private String rhythm() {
    List<String> parts = new ArrayList<>();
    int least = instance.stretch().min();
    int minutes = 0;
    for (AgendaItem item : answer.agenda().items()) {
      if (item instanceof Activity) {
        minutes += Answer.minutes(item.length());
      } else if (item instanceof Pause pause) {
        if (!pause.meal() && minutes < least) {
          parts.add(minutes + " min before the break " + answer.clock().said(pause.start()));
        }
        minutes = 0;
      }
    }
    if (minutes < least) {
      parts.add(minutes + " min at the end");
    }
    return "stretches of work under " + least + " min: " + Words.list(parts);
  }

  private String pauses() {
    long ordinary = answer.pauses().stream().filter(pause -> !pause.meal()).count();
    return Words.count((int) ordinary, "break takes ", "breaks take ")
        + Words.time((int) ordinary * instance.breakMinutes());
  }

  private String idle() {
    return Words.time(answer.idleMinutes()) + " are left over";
  }

  private static String moreOrLess(int minutes) {
    return Math.abs(minutes) + " min " + (minutes > 0 ? "more" : "less");
  }
}
