package org.arcwright.examples.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Step;

/** Large catalogs, made from the exercises of another. */
final class Catalogs {
  private Catalogs() {}

  /** So many exercises in turn from the catalog's own, each a little longer, shorter or livelier. */
  static Catalog grown(Catalog catalog, int exercises, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Exercise> own = List.copyOf(catalog.exercises().values());
    List<Exercise> all = new ArrayList<>();
    for (int i = 0; i < exercises; i++) {
      all.add(variant(own.get(i % own.size()), i, random));
    }
    return Catalog.of(
        catalog.products().values(), catalog.tools().values(), all, catalog.goals().values());
  }

  private static Exercise variant(Exercise exercise, int number, SplittableRandom random) {
    int percent = random.nextInt(80, 126);
    int energy = exercise.energy() + random.nextInt(-1, 2);
    return new Exercise(
        exercise.id() + "-" + number,
        exercise.title(),
        exercise.kind(),
        exercise.purpose(),
        exercise.people(),
        exercise.breakout(),
        Math.max(1, Math.min(5, energy)),
        exercise.openness(),
        exercise.moves(),
        exercise.needs(),
        exercise.yields(),
        exercise.opening(),
        exercise.steps().stream().map(step -> scaled(step, percent)).toList(),
        exercise.modes(),
        exercise.care(),
        exercise.notes(),
        exercise.source());
  }

  private static Step scaled(Step step, int percent) {
    Minutes minutes =
        new Minutes(
            scaled(step.minutes().min(), percent),
            scaled(step.minutes().typical(), percent),
            scaled(step.minutes().max(), percent));
    return new Step(step.text(), step.speaker(), step.format(), minutes, step.per(), step.rounds());
  }

  private static Duration scaled(Duration duration, int percent) {
    return Duration.ofSeconds(duration.toSeconds() * percent / 100);
  }
}
