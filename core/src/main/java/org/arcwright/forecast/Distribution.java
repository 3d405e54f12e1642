package org.arcwright.forecast;

import java.util.Arrays;
import org.arcwright.catalog.InvalidValueException;

/** How likely each whole minute is: a probability mass over a range of minutes. Immutable. */
public final class Distribution {
  /** Sums of chances that should meet a round figure miss it by less. */
  private static final double ROUNDING = 1e-12;

  private final int from;
  private final double[] masses;

  private Distribution(int from, double[] masses) {
    this.from = from;
    this.masses = masses;
  }

  /**
   * Masses for {@code from}, {@code from + 1} and so on; they need not add up to one, for they are
   * made to.
   *
   * @throws InvalidValueException if one is negative or no number, or all are zero
   */
  public static Distribution of(int from, double... masses) {
    double sum = 0;
    for (double mass : masses) {
      if (!(mass >= 0 && mass < Double.POSITIVE_INFINITY)) {
        throw new InvalidValueException("masses", mass, "0 or more is right");
      }
      sum += mass;
    }
    if (sum == 0) {
      throw new InvalidValueException("masses", 0, "at least one is over 0");
    }
    double[] chances = new double[masses.length];
    for (int i = 0; i < masses.length; i++) {
      chances[i] = masses[i] / sum;
    }
    return new Distribution(from, chances);
  }

  /** Exactly that minute. */
  public static Distribution at(int minute) {
    return of(minute, 1);
  }

  /** The sum with an independent other. Its work is the product of the two ranges. */
  public Distribution plus(Distribution other) {
    double[] sum = new double[masses.length + other.masses.length - 1];
    for (int i = 0; i < masses.length; i++) {
      for (int j = 0; j < other.masses.length; j++) {
        sum[i + j] += masses[i] * other.masses[j];
      }
    }
    return new Distribution(from + other.from, sum);
  }

  /** The later of this and a fixed minute: what comes early waits. */
  public Distribution notBefore(int minute) {
    if (minute <= from) {
      return this;
    }
    double[] rest = new double[Math.max(1, from + masses.length - minute)];
    rest[0] = chanceUpTo(minute);
    for (int i = 1; i < rest.length; i++) {
      rest[i] = masses[minute + i - from];
    }
    return new Distribution(minute, rest);
  }

  /**
   * This, knowing that it is no less than a minute, such as for what runs already. Where that was
   * thought impossible, it is that minute.
   */
  public Distribution given(int atLeast) {
    if (atLeast <= from) {
      return this;
    }
    if (chanceWithin(atLeast, last()) < ROUNDING) {
      return at(atLeast);
    }
    return of(atLeast, Arrays.copyOfRange(masses, atLeast - from, masses.length));
  }

  /** The chance of that minute or an earlier one. */
  public double chanceUpTo(int minute) {
    return chanceWithin(from, minute);
  }

  /** The chance of the minutes from the first to the last, both counted. */
  public double chanceWithin(int first, int last) {
    double sum = 0;
    for (int i = Math.max(0, first - from); i <= Math.min(masses.length - 1, last - from); i++) {
      sum += masses[i];
    }
    return Math.min(1, sum);
  }

  /**
   * The earliest minute that is not exceeded with at least so many per cent.
   *
   * @param percent 1 to 99
   */
  public int percentile(int percent) {
    if (percent < 1 || percent > 99) {
      throw new InvalidValueException("percent", percent, "1 to 99 is right");
    }
    double sum = 0;
    for (int i = 0; i < masses.length; i++) {
      sum += masses[i];
      if (sum >= percent / 100.0 - ROUNDING) {
        return from + i;
      }
    }
    return last();
  }

  private int last() {
    return from + masses.length - 1;
  }

  /** The mean in minutes. */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < masses.length; i++) {
      sum += masses[i] * (from + i);
    }
    return sum;
  }

  /** The standard deviation in minutes. */
  public double standardDeviation() {
    double mean = mean();
    double sum = 0;
    for (int i = 0; i < masses.length; i++) {
      sum += masses[i] * (from + i - mean) * (from + i - mean);
    }
    return Math.sqrt(sum);
  }
}
