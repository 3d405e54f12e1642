package org.arcwright.compose.search;

import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Weights;

/** The range in which the prices of agendas are told apart. */
final class PriceRange {
  private static final long SAFE = 1L << 20;

  private PriceRange() {}

  /** Whether an agenda's price could leave the range in which prices are told apart. */
  static boolean mayOverflow(Instance instance) {
    Weights weights = instance.weights();
    long perMinute =
        weights.energy() * 1000L + weights.share() * 20L + weights.rhythm() + weights.idle();
    long perItem = (long) weights.monotony() + weights.monotonyAcrossBreak() + weights.pause();
    for (Candidate candidate : instance.candidates()) {
      for (int cost : candidate.lengthCosts()) {
        perItem = Math.max(perItem, (long) candidate.cost() + cost + weights.monotony());
      }
    }
    return instance.cap() * perMinute + instance.cells() * perItem > SAFE;
  }
}
