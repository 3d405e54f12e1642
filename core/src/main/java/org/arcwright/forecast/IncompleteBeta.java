package org.arcwright.forecast;

/** The regularized incomplete beta function, the distribution function of the beta distribution. */
final class IncompleteBeta {
  private static final double PRECISION = 1e-15;
  private static final int MOST_STEPS = 500;

  /** From here on three terms of Stirling's series are exact to the last digits. */
  private static final double LARGE = 30;

  private IncompleteBeta() {}

  /**
   * The chance that a beta variable is at most {@code x}, to about thirteen digits: the continued
   * fraction of the NIST Digital Library of Mathematical Functions, 8.17.22, evaluated by Lentz's
   * method (Applied Optics 15, 1976, from memory).
   *
   * @param a over 0
   * @param b over 0
   */
  static double at(double x, double a, double b) {
    if (x <= 0) {
      return 0;
    }
    if (x >= 1) {
      return 1;
    }
    if (x > (a + 1) / (a + b + 2)) {
      return 1 - at(1 - x, b, a);
    }
    double logBeta = logGamma(a) + logGamma(b) - logGamma(a + b);
    double factor = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta) / a;
    return factor / fraction(x, a, b);
  }

  /** 1 + d1 / (1 + d2 / (1 + ...)), whose terms fall fast where x is below the mean. */
  private static double fraction(double x, double a, double b) {
    double value = 1;
    double numerator = 1;
    double denominator = 0;
    for (int step = 1; step <= MOST_STEPS; step++) {
      double term = term(step, x, a, b);
      denominator = 1 / (1 + term * denominator);
      numerator = 1 + term / numerator;
      double change = numerator * denominator;
      value *= change;
      if (Math.abs(change - 1) < PRECISION) {
        break;
      }
    }
    return value;
  }

  private static double term(int step, double x, double a, double b) {
    int m = step / 2;
    return step % 2 == 0
        ? m * (b - m) * x / ((a + step - 1) * (a + step))
        : -(a + m) * (a + b + m) * x / ((a + step - 1) * (a + step));
  }

  /** Stirling's series, after the argument is raised to where it is exact. */
  private static double logGamma(double x) {
    double raised = x;
    double product = 1;
    while (raised < LARGE) {
      product *= raised;
      raised++;
    }
    double inverse = 1 / raised;
    double series = inverse / 12 - Math.pow(inverse, 3) / 360 + Math.pow(inverse, 5) / 1260;
    return (raised - 0.5) * Math.log(raised)
        - raised
        + 0.5 * Math.log(2 * Math.PI)
        + series
        - Math.log(product);
  }
}
