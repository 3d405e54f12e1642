package org.arcwright.compose.search;

import java.util.List;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * The same instance with every price 0: what fits it fits the priced one, and the other way round.
 */
final class FreeOfCharge {
  private static final long SAFE = 1L << 20;

  private FreeOfCharge() {}

  static Instance of(Instance instance) {
    List<Candidate> free = instance.candidates().stream().map(FreeOfCharge::free).toList();
    return new Instance(
        instance.grid(),
        instance.cap(),
        instance.curve(),
        instance.stretch(),
        instance.breakMinutes(),
        instance.meals(),
        instance.bufferPercent(),
        instance.products(),
        instance.initial(),
        instance.phases(),
        free,
        instance.include(),
        instance.pins(),
        new Weights(0, 0, 0, 0, 0, 0, 0));
  }

  private static Candidate free(Candidate candidate) {
    return new Candidate(
        candidate.id(),
        candidate.kind(),
        candidate.lengths(),
        candidate.lengths().stream().map(length -> 0).toList(),
        candidate.energy(),
        candidate.format(),
        candidate.needs(),
        candidate.yields(),
        0);
  }

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
