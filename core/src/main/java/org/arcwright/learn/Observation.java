package org.arcwright.learn;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.forecast.Forecaster;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Run;

/**
 * How long an exercise took on one day.
 *
 * @param exercise its id
 * @param people how many took part
 * @param expected what the catalog foresees for that plan and so many people, over zero
 * @param took what it took, over zero
 */
record Observation(String exercise, int people, Duration expected, Duration took) {
  /**
   * What one log tells. An exercise that was taken up again counts once, with all its time. Breaks,
   * what never ended, what was not planned and what the catalog does not know are passed over.
   */
  static List<Observation> of(Progress log, Catalog catalog) {
    Map<String, List<Run>> runs = new LinkedHashMap<>();
    for (Run run : log.runs()) {
      if (!run.isBreak()) {
        runs.computeIfAbsent(run.item(), item -> new ArrayList<>()).add(run);
      }
    }
    List<Observation> observations = new ArrayList<>();
    runs.forEach(
        (item, parts) ->
            catalog
                .exercise(item)
                .flatMap(exercise -> of(exercise, log.workshop().people(), parts))
                .ifPresent(observations::add));
    return observations;
  }

  private static Optional<Observation> of(Exercise exercise, int people, List<Run> parts) {
    Optional<Duration> planned =
        parts.stream().flatMap(part -> part.planned().stream()).findFirst();
    Duration took = Duration.ZERO;
    for (Run part : parts) {
      if (part.took().isEmpty()) {
        return Optional.empty();
      }
      took = took.plus(part.took().get());
    }
    if (planned.isEmpty() || took.isZero()) {
      return Optional.empty();
    }
    Duration expected = Forecaster.expected(exercise, people, planned.get());
    return Optional.of(new Observation(exercise.id(), people, expected, took));
  }

  /** Logarithm of what it took as a multiple of what was foreseen. */
  double logRatio() {
    return Math.log((double) took.toMillis() / expected.toMillis());
  }
}
