package org.arcwright.vote;

import java.math.BigInteger;
import org.arcwright.catalog.InvalidValueException;

/**
 * An exact number, kept in lowest terms. Operations throw {@link ArithmeticException} rather than
 * lose a digit; within the limits of this package that cannot happen.
 *
 * @param numerator any number
 * @param denominator over 0; 1 for a whole number
 */
public record Fraction(long numerator, long denominator) implements Comparable<Fraction> {
  /** Nothing. */
  public static final Fraction ZERO = of(0);

  /** Reduces to lowest terms; refuses a denominator of 0 or under. */
  public Fraction {
    if (denominator < 1) {
      throw new InvalidValueException("denominator", denominator, "it has to be over 0");
    }
    long divisor = gcd(denominator, Math.abs(numerator % denominator));
    numerator /= divisor;
    denominator /= divisor;
  }

  /** A whole number. */
  public static Fraction of(long whole) {
    return new Fraction(whole, 1);
  }

  /** So many halves. */
  static Fraction halves(long halves) {
    return new Fraction(halves, 2);
  }

  /** The sum of the two. */
  public Fraction plus(Fraction other) {
    return new Fraction(
        Math.addExact(
            Math.multiplyExact(numerator, other.denominator),
            Math.multiplyExact(other.numerator, denominator)),
        Math.multiplyExact(denominator, other.denominator));
  }

  /** This less the other. */
  public Fraction minus(Fraction other) {
    return plus(new Fraction(Math.negateExact(other.numerator), other.denominator));
  }

  /** The number without its sign. */
  public Fraction abs() {
    return numerator < 0 ? new Fraction(Math.negateExact(numerator), denominator) : this;
  }

  /** -1, 0 or 1. */
  public int signum() {
    return Long.signum(numerator);
  }

  /** Orders by size; the products are taken without a limit. */
  @Override
  public int compareTo(Fraction other) {
    return BigInteger.valueOf(numerator)
        .multiply(BigInteger.valueOf(other.denominator))
        .compareTo(BigInteger.valueOf(other.numerator).multiply(BigInteger.valueOf(denominator)));
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Such as {@code 17} or {@code 5/2}. */
  @Override
  public String toString() {
    return denominator == 1 ? String.valueOf(numerator) : numerator + "/" + denominator;
  }
}
