package org.arcwright.learn;

import java.time.Duration;
import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.Step;

/**
 * Gives an exercise the time it really takes: each step's minutes times one factor. The exercise
 * that comes out is a whole one, which any catalog takes in the other's place, and which a trainer
 * reads and changes like every other.
 */
public final class Pace {
  private static final long QUARTER_MINUTE = 15;

  private Pace() {}

  /**
   * The exercise at another pace: in quarters of a minute, or to the second where a step counts
   * once for each person, group or round. A step that took some time takes some still.
   *
   * @param factor how many times as long, over 0
   */
  public static Exercise at(Exercise exercise, double factor) {
    List<Step> steps = exercise.steps().stream().map(step -> step(step, factor)).toList();
    return exercise.withSteps(steps);
  }

  private static Step step(Step step, double factor) {
    long unit = step.per() == Per.SESSION ? QUARTER_MINUTE : 1;
    Minutes minutes = step.minutes();
    return new Step(
        step.text(),
        step.speaker(),
        step.format(),
        new Minutes(
            times(minutes.min(), factor, unit),
            times(minutes.typical(), factor, unit),
            times(minutes.max(), factor, unit)),
        step.per(),
        step.rounds());
  }

  private static Duration times(Duration time, double factor, long unit) {
    long units = Math.round(time.toMillis() / 1000.0 * factor / unit);
    return Duration.ofSeconds(time.isZero() ? 0 : unit * Math.max(1, units));
  }
}
