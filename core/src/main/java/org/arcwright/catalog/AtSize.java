package org.arcwright.catalog;

import java.util.List;
import java.util.Optional;

/**
 * An exercise as it is run with so many people: each step with its minutes and its groups.
 *
 * @param exercise the exercise
 * @param people how many
 * @param steps its steps, in order
 * @param minutes how long it takes in all
 */
public record AtSize(Exercise exercise, int people, List<StepAtSize> steps, Minutes minutes) {
  /**
   * One step with so many people.
   *
   * @param step the step
   * @param times how often its minutes count: once for each turn, group or round
   * @param minutes how long it takes in all
   * @param groups the pairs or small groups that people sit in, or that take turns; none where all
   *     are together or alone
   */
  public record StepAtSize(Step step, int times, Minutes minutes, Optional<Split> groups) {}

  /** Takes a copy of the steps. */
  public AtSize {
    steps = List.copyOf(steps);
  }

  /**
   * The exercise with so many people. Linear in its steps.
   *
   * @throws InvalidValueException if it does not serve that many
   */
  public static AtSize of(Exercise exercise, int people) {
    Minutes minutes = exercise.minutes(people);
    List<StepAtSize> steps =
        exercise.steps().stream()
            .map(
                step -> {
                  int times = step.times(people, exercise.breakout());
                  return new StepAtSize(
                      step, times, step.minutes().times(times), groups(exercise, step, people));
                })
            .toList();
    return new AtSize(exercise, people, steps, minutes);
  }

  private static Optional<Split> groups(Exercise exercise, Step step, int people) {
    if (step.format() == Format.PAIRS) {
      return Optional.of(Split.pairs(people));
    }
    return step.format() == Format.SMALL_GROUPS || step.per() == Per.GROUP
        ? exercise.breakout().map(size -> size.split(people))
        : Optional.empty();
  }
}
