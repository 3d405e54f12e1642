package org.arcwright.forecast;

import org.arcwright.catalog.InvalidValueException;

/**
 * A duration of which the least, the most likely and the greatest value are known: a beta
 * distribution stretched over that range, with its mean at (min + 4 typical + max) / 6. Malcolm,
 * Roseboom, Clark and Fazar, "Application of a technique for research and development program
 * evaluation", Operations Research 7 (1959), from memory. Its standard deviation is the beta
 * distribution's own, not the rule of thumb (max − min) / 6 that goes with the normal
 * approximation.
 *
 * @param min least, zero or more
 * @param typical most likely
 * @param max greatest
 */
public record BetaPert(double min, double typical, double max) {
  /** How much the typical value counts against the two ends. */
  private static final double WEIGHT = 4;

  /** Refuses a range that is turned round, and negative or endless times. */
  public BetaPert {
    if (!(0 <= min && min <= typical && typical <= max && max < Double.POSITIVE_INFINITY)) {
      throw new InvalidValueException(
          "minutes",
          "[" + min + ", " + typical + ", " + max + "]",
          "write them ascending: min, typical, max");
    }
  }

  /** The first shape of the beta distribution, 1 to 5; the other makes it six. */
  public double alpha() {
    return max == min ? 1 + WEIGHT / 2 : 1 + WEIGHT * (typical - min) / (max - min);
  }

  /** The second shape. */
  public double beta() {
    return 2 + WEIGHT - alpha();
  }

  /** The mean. */
  public double mean() {
    return (min + WEIGHT * typical + max) / (2 + WEIGHT);
  }

  /** The standard deviation. */
  public double standardDeviation() {
    return Math.sqrt((mean() - min) * (max - mean()) / (3 + WEIGHT));
  }

  /** The chance that it takes at most so long. */
  public double chanceUpTo(double time) {
    if (max == min) {
      return time < min ? 0 : 1;
    }
    return IncompleteBeta.at((time - min) / (max - min), alpha(), beta());
  }

  /** The same, each time taken as the whole minute nearest to it. */
  public Distribution inWholeMinutes() {
    int first = (int) Math.floor(min + 0.5);
    int last = (int) Math.floor(max + 0.5);
    double[] masses = new double[last - first + 1];
    double below = 0;
    for (int i = 0; i < masses.length; i++) {
      double upTo = i == masses.length - 1 ? 1 : chanceUpTo(first + i + 0.5);
      masses[i] = Math.max(0, upTo - below);
      below = upTo;
    }
    return Distribution.of(first, masses);
  }
}
