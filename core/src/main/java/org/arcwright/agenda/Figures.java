package org.arcwright.agenda;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.Kind;

/**
 * What can be counted about an agenda.
 *
 * @param minutesByKind exercise time for each kind that occurs
 * @param energyFit how near the exercises keep to the curve, in per cent: 100 on it throughout, 0
 *     four levels off throughout
 * @param longestStretch longest time without a break
 * @param cost what the composer weighed; the best agenda has the least
 */
public record Figures(
    Map<Kind, Duration> minutesByKind, int energyFit, Duration longestStretch, Cost cost) {
  /** Copies the map. */
  public Figures {
    Map<Kind, Duration> copy = new EnumMap<>(Kind.class);
    copy.putAll(minutesByKind);
    minutesByKind = Collections.unmodifiableMap(copy);
  }

  /** Tenths between the calmest and the liveliest. */
  private static final int WIDEST = 40;

  /**
   * Counts what an agenda shows by itself; its cost is nothing, for only a brief says what counts.
   *
   * @param items exercises and breaks, in order
   * @param curve target energy in tenths, at even distances over the cap; where it is empty,
   *     everything fits
   * @param cap the time at hand
   */
  public static Figures of(List<AgendaItem> items, List<Integer> curve, Duration cap) {
    Map<Kind, Duration> minutes = new EnumMap<>(Kind.class);
    Duration longest = Duration.ZERO;
    Duration stretch = Duration.ZERO;
    for (AgendaItem item : items) {
      if (item instanceof AgendaItem.Activity activity) {
        activity.kind().ifPresent(kind -> minutes.merge(kind, item.length(), Duration::plus));
        stretch = stretch.plus(item.length());
        longest = longest.compareTo(stretch) < 0 ? stretch : longest;
      } else {
        stretch = Duration.ZERO;
      }
    }
    return new Figures(minutes, energyFit(items, curve, cap), longest, Cost.NONE);
  }

  private static int energyFit(List<AgendaItem> items, List<Integer> curve, Duration cap) {
    long off = 0;
    long minutes = 0;
    for (AgendaItem item : items) {
      if (item instanceof AgendaItem.Activity activity && !curve.isEmpty()) {
        long end = Math.min(item.end().toMinutes(), cap.toMinutes());
        for (long minute = item.start().toMinutes(); minute < end; minute++) {
          int target = curve.get((int) (minute * curve.size() / cap.toMinutes()));
          off += Math.abs(activity.energy() - target);
          minutes++;
        }
      }
    }
    return minutes == 0 ? 100 : (int) Math.round(100 - 100.0 * off / (WIDEST * minutes));
  }

  /**
   * The cost with its parts, in points.
   *
   * @param exercises the exercises' own
   * @param lengths exercises shorter or longer than usual
   * @param energy off the energy curve
   * @param share phases off their share of the time
   * @param monotony the same format twice in a row
   * @param rhythm stretches too short
   * @param pauses breaks
   * @param idle time left over
   */
  public record Cost(
      long exercises,
      long lengths,
      long energy,
      long share,
      long monotony,
      long rhythm,
      long pauses,
      long idle) {
    /** Nothing has been weighed. */
    public static final Cost NONE = new Cost(0, 0, 0, 0, 0, 0, 0, 0);

    /** The sum of the parts. */
    public long total() {
      return exercises + lengths + energy + share + monotony + rhythm + pauses + idle;
    }
  }
}
