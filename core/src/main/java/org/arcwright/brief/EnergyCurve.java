package org.arcwright.brief;

import java.util.List;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Word;

/**
 * Target energy over the workshop: straight lines between points.
 *
 * @param points ascending in time, at least one; before the first and after the last the curve is
 *     level
 */
public record EnergyCurve(List<Point> points) {
  private static final int CALM = 10;
  private static final int LIVELY = 50;

  /** Tenths between calm and lively. */
  public static final int WIDEST = LIVELY - CALM;

  /**
   * One point.
   *
   * @param percent of the time cap, 0 to 100
   * @param tenths energy in tenths: 10 calm to 50 lively
   */
  public record Point(int percent, int tenths) {
    /** Refuses a point outside the workshop or the scale. */
    public Point {
      if (percent < 0 || percent > 100) {
        throw new InvalidValueException("curve", percent, "a point lies at 0 to 100 per cent");
      }
      if (tenths < CALM || tenths > LIVELY) {
        throw new InvalidValueException(
            "curve", tenths / 10.0, "energy lies between 1 (calm) and 5 (lively)");
      }
    }
  }

  /** Curves that have a name. */
  public enum Shape implements Word {
    /** Warm start, liveliest before the middle, calm close. */
    ARCH("arch", 0, 30, 40, 36, 75, 30, 100, 24),
    /** The same energy throughout. */
    LEVEL("level", 0, 30, 100, 30),
    /** Starts calm and ends lively. */
    RISING("rising", 0, 24, 100, 38),
    /** Starts lively and ends calm. */
    SETTLING("settling", 0, 38, 100, 22),
    /** Calm throughout, for tender matters. */
    QUIET("quiet", 0, 24, 50, 22, 100, 20),
    /** Two rises with a dip for the meal between them, for a whole day. */
    TWO_ARCHES("two-arches", 0, 30, 25, 36, 45, 28, 60, 36, 80, 30, 100, 24);

    private final String word;
    private final EnergyCurve curve;

    Shape(String word, int... percentAndTenths) {
      this.word = word;
      Point[] points = new Point[percentAndTenths.length / 2];
      for (int i = 0; i < points.length; i++) {
        points[i] = new Point(percentAndTenths[2 * i], percentAndTenths[2 * i + 1]);
      }
      this.curve = new EnergyCurve(List.of(points));
    }

    @Override
    public String word() {
      return word;
    }

    /** The curve of that shape. */
    public EnergyCurve curve() {
      return curve;
    }
  }

  /** Refuses a curve without points and points that do not ascend. */
  public EnergyCurve {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new InvalidValueException("curve", "empty", "give at least one point");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).percent() <= points.get(i - 1).percent()) {
        throw new InvalidValueException(
            "curve", points.get(i).percent(), "write the points in the order of time");
      }
    }
  }

  /**
   * The curve moved up, as far as the scale goes.
   *
   * @param tenths of a level; under 0 it is moved down
   */
  public EnergyCurve livelier(int tenths) {
    return new EnergyCurve(
        points.stream()
            .map(
                point ->
                    new Point(
                        point.percent(), Math.max(CALM, Math.min(LIVELY, point.tenths() + tenths))))
            .toList());
  }

  /**
   * Target energy in tenths at a share of the cap, rounded to the nearest.
   *
   * @param part numerator of the share, 0 to {@code whole}
   * @param whole denominator, over 0
   */
  public int at(long part, long whole) {
    Point before = points.get(0);
    for (Point point : points) {
      if (point.percent() * whole >= 100 * part) {
        return point.percent() == before.percent()
            ? point.tenths()
            : between(before, point, part, whole);
      }
      before = point;
    }
    return before.tenths();
  }

  private static int between(Point from, Point to, long part, long whole) {
    if (100 * part <= from.percent() * whole) {
      return from.tenths();
    }
    double share = (100.0 * part / whole - from.percent()) / (to.percent() - from.percent());
    return (int) Math.round(from.tenths() + share * (to.tenths() - from.tenths()));
  }
}
