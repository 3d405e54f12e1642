package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/**
 * A forecast held against a million days drawn at random, with the beta sampler of Apache Commons
 * Math 3.6.1: times are drawn to the second there, while the forecast counts whole minutes.
 */
class SimulationTest {
  private static final int DAYS = 1_000_000;
  private static final double[][] RANGES = {
    {5, 8, 15}, {10, 20, 60}, {12, 15, 20}, {20, 30, 35}, {8, 8, 8}, {15, 25, 50}, {10, 12, 15}
  };
  private static final int[] PLANNED = {10, 20, 10, 35, 8, 20, 25};

  /** After the second exercise comes a break; after the fifth a gap in the plan, so all wait. */
  private static final int BREAK_AFTER = 1;

  private static final int GAP_AFTER = 4;
  private static final int BREAK = 10;
  private static final int GAP = 12;

  @Test
  void every_percentile_is_within_a_minute() {
    Forecast forecast = forecast();
    double[] ends = new double[DAYS];
    double[] breaks = new double[DAYS];
    draw(ends, breaks);
    Arrays.sort(ends);

    for (int percent = 1; percent <= 99; percent++) {
      double drawn = ends[DAYS / 100 * percent - 1];
      assertThat((double) forecast.end(percent).toMinutes())
          .as("%d %%", percent)
          .isCloseTo(drawn, within(1.0));
    }
    int promised = (int) forecast.promised().toMinutes();
    double onTime = (double) Arrays.stream(ends).filter(end -> end <= promised).count() / DAYS;
    assertThat(forecast.onTime()).isCloseTo(onTime, within(0.02));
    double near = Arrays.stream(breaks).filter(at -> Math.abs(at - 30) <= 5.5).count();
    assertThat(((Part.Rest) forecast.parts().get(2)).onTime())
        .isCloseTo(near / DAYS, within(0.002));
  }

  private static Forecast forecast() {
    Day day = new Day();
    for (int i = 0; i < RANGES.length; i++) {
      day.exercise("e" + i, RANGES[i][0], RANGES[i][1], RANGES[i][2], PLANNED[i]);
      if (i == BREAK_AFTER) {
        day.pause(BREAK);
      } else if (i == GAP_AFTER) {
        day.gap(GAP);
      }
    }
    return day.forecast(20);
  }

  private static void draw(double[] ends, double[] breaks) {
    Well19937c random = new Well19937c(1959);
    BetaDistribution[] betas = new BetaDistribution[RANGES.length];
    for (int i = 0; i < RANGES.length; i++) {
      BetaPert took = took(i);
      betas[i] = new BetaDistribution(random, took.alpha(), took.beta());
    }
    int gapEnds = Arrays.stream(PLANNED).limit(GAP_AFTER + 1).sum() + BREAK + GAP;
    for (int day = 0; day < DAYS; day++) {
      double at = late(random.nextDouble());
      for (int i = 0; i < RANGES.length; i++) {
        BetaPert took = took(i);
        at += took.min() + (took.max() - took.min()) * betas[i].sample();
        if (i == BREAK_AFTER) {
          breaks[day] = at;
          at += BREAK + late(random.nextDouble());
        } else if (i == GAP_AFTER) {
          at = Math.max(at, gapEnds);
        }
      }
      ends[day] = at;
    }
  }

  /** The plan is the most likely time, within the exercise's range. */
  private static BetaPert took(int i) {
    double typical = Math.max(RANGES[i][0], PLANNED[i]);
    return new BetaPert(RANGES[i][0], typical, Math.max(RANGES[i][2], PLANNED[i]));
  }

  /** Allen et al. 2018: 49 % on time, 37 % five minutes late, 14 % ten minutes late. */
  private static double late(double chance) {
    return chance < 0.49 ? 0 : chance < 0.86 ? 5 : 10;
  }
}
