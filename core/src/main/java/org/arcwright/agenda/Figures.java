package org.arcwright.agenda;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
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
    /** The sum of the parts. */
    public long total() {
      return exercises + lengths + energy + share + monotony + rhythm + pauses + idle;
    }
  }
}
