package org.arcwright.forecast;

import java.time.Duration;
import java.util.List;
import org.arcwright.catalog.InvalidValueException;

/**
 * A time that is not certain, by how surely it is not exceeded: with 5, 20, 50, 80 and 95 per cent.
 *
 * @param p5 with 5 %
 * @param p20 with 20 %
 * @param p50 with 50 %: as likely earlier as later
 * @param p80 with 80 %
 * @param p95 with 95 %
 */
public record Band(Duration p5, Duration p20, Duration p50, Duration p80, Duration p95) {
  /** Refuses times that do not ascend. */
  public Band {
    List<Duration> all = List.of(p5, p20, p50, p80, p95);
    for (int i = 1; i < all.size(); i++) {
      if (all.get(i).compareTo(all.get(i - 1)) < 0) {
        throw new InvalidValueException(
            "band", all.get(i).toMinutes(), "the five times of a band ascend");
      }
    }
  }

  static Band of(Distribution time) {
    return new Band(
        Duration.ofMinutes(time.percentile(5)),
        Duration.ofMinutes(time.percentile(20)),
        Duration.ofMinutes(time.percentile(50)),
        Duration.ofMinutes(time.percentile(80)),
        Duration.ofMinutes(time.percentile(95)));
  }
}
