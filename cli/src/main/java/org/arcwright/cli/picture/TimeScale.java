package org.arcwright.cli.picture;

import java.time.Duration;
import java.time.LocalTime;
import org.arcwright.cli.words.Hours;

/**
 * Where a time stands in a picture in which time runs from left to right.
 *
 * @param left where {@code from} stands
 * @param right where {@code to} stands
 * @param from first time from the workshop's start
 * @param to last time from the workshop's start
 */
record TimeScale(int left, int right, Duration from, Duration to) {
  private static final int[] TICK_MINUTES = {5, 10, 15, 30, 60, 120, 240};
  private static final int TICK_WIDTH = 58;

  double x(Duration at) {
    return x((double) at.toMinutes());
  }

  /** Where so many minutes from the start are; what is later than the last stands there too. */
  double x(double minutes) {
    return left + (right - left) * Math.min(1, (minutes - from.toMinutes()) / (double) all());
  }

  double width(Duration from, Duration to) {
    return x(to) - x(from);
  }

  private long all() {
    return Math.max(1, to.minus(from).toMinutes());
  }

  /** Marks round times of the clock below the line at {@code y}. */
  void ticks(Svg svg, int y, Hours hours) {
    int step = TICK_MINUTES[TICK_MINUTES.length - 1];
    for (int minutes : TICK_MINUTES) {
      if ((right - left) * (long) minutes / all() >= TICK_WIDTH) {
        step = minutes;
        break;
      }
    }
    LocalTime start = hours.start().map(begin -> begin.toLocalTime()).orElse(LocalTime.MIDNIGHT);
    long begin = start.getHour() * 60L + start.getMinute() + from.toMinutes();
    long past = Math.floorMod(begin, step);
    long first = from.toMinutes() + (past == 0 ? 0 : step - past);
    for (long minute = first; minute <= to.toMinutes(); minute += step) {
      double x = x((double) minute);
      svg.add(
          "<path d=\"M%.1f %dV%d\" class=\"arc-line\" stroke=\"#000\" stroke-width=\"1\"/>",
          x, y, y + 4);
      String anchor = x > right - 20 ? "end" : "middle";
      svg.text(
          (int) Math.round(x),
          y + 18,
          "text-anchor=\"" + anchor + "\" class=\"arc-soft\" fill=\"#444\"",
          hours.at(Duration.ofMinutes(minute)));
    }
  }
}
