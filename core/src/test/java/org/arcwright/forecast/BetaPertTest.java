package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaPertTest {
  /** Shapes, mean and exact standard deviation as they follow from the definition, by hand. */
  @Test
  void ten_twenty_sixty() {
    BetaPert time = new BetaPert(10, 20, 60);

    assertThat(time.alpha()).isCloseTo(1.8, within(1e-12));
    assertThat(time.beta()).isCloseTo(4.2, within(1e-12));
    assertThat(time.mean()).isEqualTo(25);
    assertThat(time.standardDeviation()).isCloseTo(8.660, within(5e-4));
  }

  /** Held against the beta distribution of Apache Commons Math 3.6.1. */
  @ParameterizedTest
  @CsvSource({
    "10, 20, 60",
    "0, 0, 1",
    "0, 1, 1",
    "5, 5, 25",
    "5, 25, 25",
    "3, 4, 5",
    "30, 31, 480",
    "7, 7.5, 9"
  })
  void chances_are_those_of_the_reference(double min, double typical, double max) {
    BetaPert time = new BetaPert(min, typical, max);
    BetaDistribution reference = new BetaDistribution(time.alpha(), time.beta());

    for (int i = -10; i <= 1010; i++) {
      double part = i / 1000.0;
      assertThat(time.chanceUpTo(min + part * (max - min)))
          .isCloseTo(reference.cumulativeProbability(part), within(1e-12));
    }
    assertThat(time.mean())
        .isCloseTo(min + (max - min) * reference.getNumericalMean(), within(1e-9));
    assertThat(time.standardDeviation())
        .isCloseTo((max - min) * Math.sqrt(reference.getNumericalVariance()), within(1e-9));
  }

  @Test
  void whole_minutes_keep_mean_and_spread() {
    Distribution minutes = new BetaPert(10, 20, 60).inWholeMinutes();

    assertThat(minutes.mean()).isCloseTo(25, within(0.01));
    assertThat(minutes.standardDeviation()).isCloseTo(8.660, within(0.01));
    assertThat(minutes.chanceWithin(10, 60)).isCloseTo(1, within(1e-12));
  }

  @Test
  void what_is_certain_has_no_spread() {
    BetaPert time = new BetaPert(7.5, 7.5, 7.5);

    assertThat(time.chanceUpTo(7.4)).isZero();
    assertThat(time.chanceUpTo(7.5)).isEqualTo(1);
    assertThat(time.standardDeviation()).isZero();
    assertThat(time.inWholeMinutes().percentile(50)).isEqualTo(8);
  }

  @Test
  void a_range_ascends() {
    assertThatThrownBy(() -> new BetaPert(5, 4, 6)).hasMessageContaining("ascending");
    assertThatThrownBy(() -> new BetaPert(5, 6, Double.NaN)).hasMessageContaining("ascending");
    assertThatThrownBy(() -> new BetaPert(5, 6, Double.POSITIVE_INFINITY))
        .hasMessageContaining("ascending");
  }

  /**
   * "Reliable Construction", mean critical path A B C E F J L N, in Hillier and Lieberman,
   * "Introduction to Operations Research" (the table from memory): mean 44, variance 9 and P(T ≤
   * 47) = .8413 by the textbook's way, a normal curve with the variance ((max − min) / 6)². The
   * exact sum of beta times differs from that curve by what the textbook's way leaves out.
   */
  @Test
  void a_published_path() {
    double[][] path = {
      {1, 2, 3},
      {2, 3.5, 8},
      {6, 9, 18},
      {1, 4.5, 5},
      {4, 4, 10},
      {3, 9, 9},
      {1, 5.5, 7},
      {5, 5.5, 9}
    };

    assertThat(mean(path)).isCloseTo(44, within(1e-9));
    assertThat(classicalVariance(path)).isCloseTo(9, within(1e-9));
    assertThat(normal(path, 47)).isCloseTo(0.8413, within(5e-5));
    assertThat(exact(path, 47)).isCloseTo(0.8413, within(0.02));
  }

  /**
   * A project in a row, "Project scheduling" on flylib.com: mean 24 and P(T ≤ 28) = .9633 by a
   * table of the normal curve. Its first time is so skewed that the exact sum is two per cent
   * below.
   */
  @Test
  void another_published_path() {
    double[][] path = {{5, 8, 17}, {3, 5, 7}, {4, 6, 8}, {3, 4, 5}};

    assertThat(mean(path)).isCloseTo(24, within(1e-9));
    assertThat(normal(path, 28)).isCloseTo(0.9633, within(5e-4));
    assertThat(exact(path, 28)).isCloseTo(0.9633, within(0.03));
  }

  private static double mean(double[][] path) {
    double sum = 0;
    for (double[] a : path) {
      sum += new BetaPert(a[0], a[1], a[2]).mean();
    }
    return sum;
  }

  private static double classicalVariance(double[][] path) {
    double sum = 0;
    for (double[] a : path) {
      sum += Math.pow((a[2] - a[0]) / 6, 2);
    }
    return sum;
  }

  private static double normal(double[][] path, double deadline) {
    return new NormalDistribution(mean(path), Math.sqrt(classicalVariance(path)))
        .cumulativeProbability(deadline);
  }

  /** With sixty minutes to the published unit, so that the grid does not show. */
  private static double exact(double[][] path, int deadline) {
    Distribution sum = Distribution.at(0);
    for (double[] a : path) {
      sum = sum.plus(new BetaPert(60 * a[0], 60 * a[1], 60 * a[2]).inWholeMinutes());
    }
    return sum.chanceUpTo(60 * deadline);
  }
}
