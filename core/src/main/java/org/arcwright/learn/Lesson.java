package org.arcwright.learn;

/**
 * What logs teach about one exercise.
 *
 * @param exercise its id
 * @param logs how many logs have it
 * @param people the usual number of people in them
 * @param factor how many times as long it takes as the catalog says; 1 if there are too few logs
 * @param low with four chances in five it takes at least so many times as long
 * @param high and at most so many
 */
public record Lesson(
    String exercise, int logs, int people, double factor, double low, double high) {
  /** Whether there are enough logs to learn from. */
  public boolean learnt() {
    return logs >= Learner.FEWEST;
  }
}
