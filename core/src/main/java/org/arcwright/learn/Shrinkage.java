package org.arcwright.learn;

import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * A mean that few observations pull away from what was believed before: the posterior of a normal
 * mean with a normal prior (Gelman and others, Bayesian Data Analysis, 3rd edition 2013, section
 * 2.5; from memory).
 *
 * @param mean of the posterior
 * @param sd of the posterior, over 0
 * @param priorWeight how much the prior counts, 0 to 1; the observations have the rest
 */
public record Shrinkage(double mean, double sd, double priorWeight) {
  /**
   * The posterior.
   *
   * @param priorMean what was believed before
   * @param priorSd how surely, over 0
   * @param count of observations, 0 or more
   * @param observed their mean
   * @param sd of a single observation, over 0
   * @throws InvalidValueException if a spread is not over 0, or the count is negative
   */
  public static Shrinkage of(
      double priorMean, double priorSd, int count, double observed, double sd) {
    Checks.range("count", count, 0, Integer.MAX_VALUE);
    positive("priorSd", priorSd);
    positive("sd", sd);
    double prior = 1 / (priorSd * priorSd);
    double data = count / (sd * sd);
    double weight = prior / (prior + data);
    return new Shrinkage(
        weight * priorMean + (1 - weight) * observed, Math.sqrt(1 / (prior + data)), weight);
  }

  private static void positive(String field, double spread) {
    if (!(spread > 0 && spread < Double.POSITIVE_INFINITY)) {
      throw new InvalidValueException(field, spread, "over 0 is right");
    }
  }
}
