package org.arcwright.agenda;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
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

  /**
   * Counts what an agenda shows by itself; its cost is nothing, for only a brief says what counts.
   *
   * @param items exercises and breaks, in order
   * @param curve target energy in tenths, at even distances over the cap; where it is empty,
   *     everything fits
   * @param cap the time at hand
   */
  public static Figures of(List<AgendaItem> items, List<Integer> curve, Duration cap) {
    FigureCount count = new FigureCount(curve, cap);
    for (AgendaItem item : items) {
      if (item instanceof AgendaItem.Activity activity) {
        count.exercise(
            activity.kind(),
            activity.start(),
            activity.length(),
            OptionalInt.of(activity.energy()));
      } else {
        count.pause();
      }
    }
    return count.figures(Cost.NONE);
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
