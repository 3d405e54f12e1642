package org.arcwright.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.live.Progress;

/**
 * Learns from logs how long exercises really take. An exercise's days are looked at as multiples of
 * what the forecast expects for the plan and the group of that day, in logarithms, so that twice as
 * long and half as long weigh the same. Their median is drawn towards 1 by {@link Shrinkage}: the
 * fewer the days and the wider they spread, the more the catalog keeps its word.
 *
 * <p>One odd day teaches nothing: fewer than three logs leave an exercise as it is, and with three
 * or more the median does not follow a single one, however far it lies.
 */
public final class Learner {
  /** Of fewer logs a single odd one could be the middle. */
  public static final int FEWEST = 3;

  /**
   * How well the catalog is trusted before any log: two exercises of three take, on average, a
   * fifth more or less than it says. Common practice, no source.
   */
  private static final double CATALOG_SD = 0.2;

  /** How far one day lies from an exercise's usual, until the logs tell. Common practice. */
  private static final double DAY_SD = 0.25;

  /** No group is as regular as a few equal days may look. */
  private static final double LEAST_DAY_SD = 0.05;

  /** So many days tell how far days lie apart. */
  private static final int ENOUGH_DAYS = 8;

  /** A median's standard error is so much wider than a mean's, √(π/2), for normal errors. */
  private static final double MEDIAN = Math.sqrt(Math.PI / 2);

  /** A normal distribution's standard deviation over its median absolute deviation. */
  private static final double MAD = 1.4826;

  /** Four chances of five lie within so many standard deviations. */
  private static final double FOUR_OF_FIVE = 1.2816;

  private Learner() {}

  /** Learns from some logs, and scores that. Quadratic in them. */
  public static Lessons learn(Catalog catalog, List<Progress> logs) {
    List<Observation> all = new ArrayList<>();
    logs.forEach(log -> all.addAll(Observation.of(log, catalog)));
    return new Lessons(
        logs.size(),
        (int) logs.stream().filter(log -> log.workshop().simulated()).count(),
        logs.size() < 2 ? Optional.empty() : Optional.of(score(catalog, logs)),
        List.copyOf(lessons(all, catalog).values()));
  }

  /** Holds out each log in turn. Quadratic in the logs. */
  static Score score(Catalog catalog, List<Progress> logs) {
    List<List<Observation>> days = logs.stream().map(log -> Observation.of(log, catalog)).toList();
    int predictions = 0;
    double before = 0;
    double after = 0;
    for (int out = 0; out < days.size(); out++) {
      List<Observation> others = new ArrayList<>();
      for (int day = 0; day < days.size(); day++) {
        if (day != out) {
          others.addAll(days.get(day));
        }
      }
      Map<String, Lesson> lessons = lessons(others, catalog);
      for (Observation held : days.get(out)) {
        Lesson lesson = lessons.get(held.exercise());
        double factor = lesson == null ? 1 : lesson.factor();
        double expected = minutes(held.expected().toMillis());
        double took = minutes(held.took().toMillis());
        before += Math.abs(took - expected);
        after += Math.abs(took - factor * expected);
        predictions++;
      }
    }
    return new Score(
        predictions, before / Math.max(1, predictions), after / Math.max(1, predictions));
  }

  private static double minutes(long millis) {
    return millis / 60_000.0;
  }

  private static Map<String, Lesson> lessons(List<Observation> all, Catalog catalog) {
    Map<String, List<Observation>> byExercise = new TreeMap<>();
    for (Observation one : all) {
      byExercise.computeIfAbsent(one.exercise(), id -> new ArrayList<>()).add(one);
    }
    double day = spread(byExercise);
    Map<String, Lesson> lessons = new TreeMap<>();
    byExercise.forEach(
        (id, days) ->
            catalog
                .exercise(id)
                .ifPresent(exercise -> lessons.put(id, lesson(exercise, days, day))));
    return lessons;
  }

  private static Lesson lesson(Exercise exercise, List<Observation> days, double day) {
    int people = (int) median(days.stream().map(one -> (double) one.people()).toList());
    if (days.size() < FEWEST) {
      return lesson(exercise, days.size(), people, 0, 0);
    }
    double middle = median(days.stream().map(Observation::logRatio).toList());
    Shrinkage learnt = Shrinkage.of(0, CATALOG_SD, days.size(), middle, MEDIAN * day);
    return lesson(exercise, days.size(), people, learnt.mean(), FOUR_OF_FIVE * learnt.sd());
  }

  /** From the logarithm of the factor, and how far that may be off. */
  private static Lesson lesson(Exercise exercise, int logs, int people, double log, double apart) {
    int served = exercise.nearest(people);
    return new Lesson(
        exercise.id(),
        logs,
        people,
        Math.exp(log),
        Math.exp(log - apart),
        Math.exp(log + apart),
        exercise.minutes(served).typical(),
        Pace.at(exercise, Math.exp(log)).minutes(served).typical());
  }

  /**
   * How far one day lies from its exercise's usual, over all exercises, odd days hardly counted.
   */
  private static double spread(Map<String, List<Observation>> byExercise) {
    List<Double> deviations = new ArrayList<>();
    for (List<Observation> days : byExercise.values()) {
      if (days.size() > 1) {
        double middle = median(days.stream().map(Observation::logRatio).toList());
        double lost = Math.sqrt(days.size() / (days.size() - 1.0));
        days.forEach(one -> deviations.add(lost * Math.abs(one.logRatio() - middle)));
      }
    }
    return deviations.size() < ENOUGH_DAYS
        ? DAY_SD
        : Math.max(LEAST_DAY_SD, MAD * median(deviations));
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
