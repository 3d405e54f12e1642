package org.arcwright.compose.search;

/**
 * A completion bound under tolls on exercises that earlier agendas hold, and on those that a path
 * would use twice. What is charged for each is given back for as many as may still be used, so that
 * it is a bound whatever the tolls are (Lagrangian relaxation, Geoffrion 1974).
 */
final class Guide {
  final Prices prices;
  final Bound bound;

  /** Packed toll on what each earlier agenda holds. */
  private final long[] again;

  /** Packed toll on each tracked exercise. */
  private final long[] twice;

  /** For each phase, the tolls of the tracked exercises that it or a later one can use. */
  private final long[] ahead;

  private Guide(Prices prices, Bound bound, long[] again, long[] twice, long[] ahead) {
    this.prices = prices;
    this.bound = bound;
    this.again = again;
    this.twice = twice;
    this.ahead = ahead;
  }

  /** Without tolls. */
  static Guide free(Model model, Prices prices, Bound bound) {
    int phases = model.stages.length;
    return new Guide(prices, bound, new long[0], new long[0], new long[phases]);
  }

  /**
   * With tolls.
   *
   * @param free prices without them
   * @param again cost of each exercise shared with each of the earlier agendas
   * @param twice cost of each tracked exercise
   */
  static Guide tolled(
      Prices free,
      Reach reach,
      Sharing sharing,
      Tracked tracked,
      int[] again,
      int[] twice,
      Work work) {
    Model model = reach.nodes.model;
    int[] charged = new int[model.ids.length];
    long[] packedAgain = new long[again.length];
    for (int i = 0; i < again.length; i++) {
      packedAgain[i] = model.pack(again[i]);
      for (int candidate = 0; candidate < charged.length; candidate++) {
        charged[candidate] += sharing.holds(i, candidate) ? again[i] : 0;
      }
    }
    long[] packedTwice = new long[twice.length];
    long[] ahead = new long[model.stages.length];
    for (int bit = 0; bit < twice.length; bit++) {
      packedTwice[bit] = model.pack(twice[bit]);
      charged[tracked.candidate(bit)] += twice[bit];
      for (int p = 0; p < ahead.length; p++) {
        ahead[p] += (tracked.ahead(p) >> bit & 1) * packedTwice[bit];
      }
    }
    Prices prices = free.with(charged);
    Bound bound = Bound.of(reach, prices, work);
    return new Guide(prices, bound, packedAgain, packedTwice, ahead);
  }

  /** The states through which an agenda under a ceiling may lead, of those of a reach. */
  Reach narrowed(Reach reach, Sharing sharing, long ceiling, Work work) {
    long charged = ceiling + back(sharing, sharing.start(), 0, 0);
    return new Reach(reach.nodes, reach.stages, Corridor.of(reach, prices, bound, charged, work));
  }

  /** The same, which gives nothing back. */
  Guide keeping() {
    return new Guide(prices, bound, new long[0], new long[0], new long[ahead.length]);
  }

  /** Cost that is charged for an exercise. */
  int toll(int candidate) {
    return prices.tolls[candidate];
  }

  /** Least price of a whole agenda. */
  long root(Sharing sharing) {
    return bound.root() - back(sharing, sharing.start(), 0, 0);
  }

  /**
   * What is given back: the tolls of all that may still be used.
   *
   * @param counts of what is shared
   * @param visited tracked exercises that the phase or a later one could use
   */
  long back(Sharing sharing, long counts, int phase, long visited) {
    long sum = ahead[phase];
    for (int i = 0; i < again.length; i++) {
      sum += again[i] * sharing.left(counts, i);
    }
    for (long rest = visited; rest != 0 && twice.length > 0; rest &= rest - 1) {
      int bit = Long.numberOfTrailingZeros(rest);
      sum -= bit < twice.length ? twice[bit] : 0;
    }
    return sum;
  }
}
