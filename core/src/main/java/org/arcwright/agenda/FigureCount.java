package org.arcwright.agenda;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.catalog.Kind;

/** Counts {@link Figures}, exercise by exercise and break by break, in order. */
public final class FigureCount {
  /** Tenths between the calmest and the liveliest. */
  private static final int WIDEST = 40;

  private final List<Integer> curve;
  private final long cap;
  private final Map<Kind, Duration> minutesByKind = new EnumMap<>(Kind.class);
  private Duration longest = Duration.ZERO;
  private Duration stretch = Duration.ZERO;
  private long off;
  private long minutes;

  /**
   * Starts with nothing.
   *
   * @param curve target energy in tenths, at even distances over the cap; where it is empty,
   *     everything fits
   * @param cap the time at hand
   */
  public FigureCount(List<Integer> curve, Duration cap) {
    this.curve = List.copyOf(curve);
    this.cap = cap.toMinutes();
  }

  /**
   * Counts an exercise; what of it is after the cap has no part in energy.
   *
   * @param kind if it is known
   * @param energy in tenths; without it, it has no part in how near the exercises keep to the curve
   */
  public void exercise(Optional<Kind> kind, Duration start, Duration length, OptionalInt energy) {
    kind.ifPresent(known -> minutesByKind.merge(known, length, Duration::plus));
    stretch = stretch.plus(length);
    longest = longest.compareTo(stretch) < 0 ? stretch : longest;
    if (energy.isPresent() && !curve.isEmpty()) {
      long end = Math.min(start.plus(length).toMinutes(), cap);
      for (long minute = start.toMinutes(); minute < end; minute++) {
        off += Math.abs(energy.getAsInt() - curve.get((int) (minute * curve.size() / cap)));
        minutes++;
      }
    }
  }

  /** Counts a break. */
  public void pause() {
    stretch = Duration.ZERO;
  }

  /** What has been counted. */
  public Figures figures(Cost cost) {
    int fit = minutes == 0 ? 100 : (int) Math.round(100 - 100.0 * off / (WIDEST * minutes));
    return new Figures(minutesByKind, fit, longest, cost);
  }
}
