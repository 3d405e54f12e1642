package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * A completion bound under a toll on each exercise that earlier agendas hold. What is charged for
 * each is given back for as many as may still be shared, so that it is a bound whatever the tolls
 * are (Lagrangian relaxation, Geoffrion 1974).
 */
final class Guide {
  final Prices prices;
  final Bound bound;
  private final long[] tolls;

  private Guide(Prices prices, Bound bound, long[] tolls) {
    this.prices = prices;
    this.bound = bound;
    this.tolls = tolls;
  }

  /** Without tolls. */
  Guide(Prices prices, Bound bound) {
    this(prices, bound, new long[0]);
  }

  /**
   * With tolls.
   *
   * @param tolls cost of each exercise shared with each of the earlier agendas
   */
  static Guide tolled(Model model, Reach reach, Sharing sharing, int[] tolls, Work work) {
    int[] charged = new int[model.ids.length];
    for (int candidate = 0; candidate < charged.length; candidate++) {
      for (int i = 0; i < tolls.length; i++) {
        charged[candidate] += sharing.holds(i, candidate) ? tolls[i] : 0;
      }
    }
    Prices prices = new Prices(model, charged);
    long[] packed = Arrays.stream(tolls).mapToLong(model::pack).toArray();
    return new Guide(prices, Bound.of(reach, prices, work), packed);
  }

  /** Packed price that is charged for an exercise. */
  long toll(Sharing sharing, int candidate) {
    long sum = 0;
    for (int i = 0; i < tolls.length; i++) {
      sum += sharing.holds(i, candidate) ? tolls[i] : 0;
    }
    return sum;
  }

  /** Least price of a whole agenda. */
  long root(Sharing sharing) {
    return bound.root() - back(sharing, sharing.start());
  }

  /** What is given back: the tolls of all that may still be shared. */
  long back(Sharing sharing, long counts) {
    long sum = 0;
    for (int i = 0; i < tolls.length; i++) {
      sum += tolls[i] * sharing.left(counts, i);
    }
    return sum;
  }
}
