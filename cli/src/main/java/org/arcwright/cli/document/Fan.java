package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.forecast.Band;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Part;

/**
 * How far ahead of or behind its plan a workshop may be, at each planned start and end. The further
 * the day goes, the wider it opens.
 */
final class Fan {
  /** How many lines a fan has: 5, 20, 50, 80 and 95 per cent. */
  static final int LINES = 5;

  static final int MIDDLE = 2;

  private static final int[] STEPS = {1, 2, 5, 10, 15, 20, 30, 60, 120};

  /**
   * What may be at one planned minute.
   *
   * @param planned minutes from the start
   * @param late minutes behind the plan with 5, 20, 50, 80 and 95 per cent; ahead where negative
   */
  record Point(int planned, List<Integer> late) {}

  private final List<Point> points = new ArrayList<>();
  private final int slack;

  private Fan(Forecast forecast) {
    List<AgendaItem> items = forecast.agenda().items();
    for (int i = 0; i < items.size(); i++) {
      Part part = forecast.parts().get(i);
      points.add(point(items.get(i).start(), part.begins()));
      points.add(point(items.get(i).end(), part.ends()));
    }
    slack = Answer.minutes(forecast.promised().minus(forecast.agenda().end()));
  }

  static Fan of(Forecast forecast) {
    return new Fan(forecast);
  }

  private static Point point(Duration planned, Band real) {
    List<Duration> times = List.of(real.p5(), real.p20(), real.p50(), real.p80(), real.p95());
    return new Point(
        Answer.minutes(planned),
        times.stream().map(time -> Answer.minutes(time.minus(planned))).toList());
  }

  /** The least round number of minutes that goes into a range no more than {@code most} times. */
  static int step(int range, int most) {
    for (int step : STEPS) {
      if (range / step <= most) {
        return step;
      }
    }
    return range / most;
  }

  /** The starts and ends, in order. */
  List<Point> points() {
    return points;
  }

  /** Minutes between the planned end of the last item and the promised end. */
  int slack() {
    return slack;
  }

  /** The furthest ahead that the fan or its limits reach, as a negative number or zero. */
  int least() {
    return points.stream()
        .mapToInt(point -> point.late().get(0))
        .reduce(Math.min(0, slack), Math::min);
  }

  /** The furthest behind. */
  int most() {
    return points.stream()
        .mapToInt(point -> point.late().get(LINES - 1))
        .reduce(Math.max(0, slack), Math::max);
  }

  /** The five lines at a planned minute, straight from point to point. */
  double[] at(double minute) {
    Point before = points.get(0);
    for (Point next : points) {
      if (next.planned() > minute) {
        return between(before, next, minute);
      }
      before = next;
    }
    return between(before, before, minute);
  }

  private static double[] between(Point before, Point next, double minute) {
    double part =
        next.planned() == before.planned()
            ? 0
            : (minute - before.planned()) / (next.planned() - before.planned());
    double[] late = new double[LINES];
    for (int line = 0; line < LINES; line++) {
      late[line] =
          before.late().get(line) + part * (next.late().get(line) - before.late().get(line));
    }
    return late;
  }
}
