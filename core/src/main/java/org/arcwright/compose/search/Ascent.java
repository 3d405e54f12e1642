package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;

/**
 * Moves tolls so that the bound under them rises: ascent of the Lagrangian dual along subgradients,
 * each step as long as the best price known suggests (Held, Wolfe and Crowder 1974). A step that
 * fails goes on from where it led, for the way up is seldom straight; after some the next one
 * starts at the best tolls again, and is shorter. As the bound nears the price, the states that
 * matter become fewer, and steps cheaper.
 */
final class Ascent {
  /** Bounds that are in memory at once. */
  static final int BOUNDS = 3;

  /** Failures in a row before steps get shorter. */
  private static final int TRIES = 2;

  /** Part of the full step under which there is nothing more to gain. */
  private static final double LEAST = 0.1;

  /** The agendas' tolls come after those of tracked exercises. */
  private static final int AGENDAS = Long.SIZE;

  private final Model model;
  private final Prices free;
  private final Sharing sharing;
  private final List<Integer> most;
  private final Tracked tracked;
  private final int highest;
  private final Work work;
  private Reach reach;
  private long reachedGap = Model.INFINITE;
  private Point at;
  private Point best;
  private double stride = 1;
  private int failures;

  /** Tolls, the guide under them, and how much its cheapest agenda uses too much of each. */
  private static final class Point {
    final double[] tolls;
    final int[] slope;
    final Guide guide;
    final long root;

    Point(double[] tolls, int[] slope, Guide guide, long root) {
      this.tolls = tolls;
      this.slope = slope;
      this.guide = guide;
      this.root = root;
    }
  }

  /**
   * Starts from the best tolls of an ascent with fewer agendas, or from none.
   *
   * @param free prices without tolls
   * @param most how many exercises of each earlier agenda may come again
   * @param highest no toll is over it
   */
  Ascent(
      Prices free,
      Reach reach,
      Sharing sharing,
      List<Integer> most,
      Tracked tracked,
      double[] tolls,
      int highest,
      Work work) {
    this.model = reach.nodes.model;
    this.free = free;
    this.reach = reach;
    this.sharing = sharing;
    this.most = List.copyOf(most);
    this.tracked = tracked;
    this.highest = highest;
    this.work = work;
    this.best = point(Arrays.copyOf(tolls, AGENDAS + most.size()));
    this.at = best;
  }

  /** The guide under the best tolls so far. */
  Guide guide() {
    return best.guide;
  }

  double[] tolls() {
    return best.tolls;
  }

  /** Least price of a whole agenda under the best tolls. */
  long root() {
    return best.root;
  }

  /** Whether another step may be worth it. */
  boolean over() {
    return stride < LEAST;
  }

  /**
   * Takes a step.
   *
   * @param price of the best agenda known, or a ceiling
   * @return whether the bound is higher than ever
   */
  boolean step(long price) {
    narrow(price);
    double square = 0;
    for (int i = 0; i < at.slope.length; i++) {
      square += at.slope[i] > 0 || at.tolls[i] > 0 ? at.slope[i] * (double) at.slope[i] : 0;
    }
    if (square == 0) {
      stride = 0;
      return false;
    }
    double root = model.cost(best.root);
    double gap = Math.min(model.cost(price) - root, Math.abs(root) / 4);
    double by = stride * (1 + gap) / square;
    double[] tolls = at.tolls.clone();
    for (int i = 0; i < tolls.length; i++) {
      tolls[i] = Math.max(0, Math.min(highest, tolls[i] + by * at.slope[i]));
    }
    at = point(tolls);
    if (at.root > best.root) {
      best = at;
      failures = 0;
      return true;
    }
    failures++;
    if (failures == TRIES) {
      failures = 0;
      stride /= 2;
      at = best;
    }
    return false;
  }

  /** Leaves out the states that no agenda under the price passes, once they are likely many. */
  private void narrow(long price) {
    long gap = price - best.root;
    if (gap < reachedGap / 2) {
      reach = best.guide.narrowed(reach, sharing, price, work);
      reachedGap = gap;
    }
  }

  private Point point(double[] tolls) {
    int[] rounded = new int[tolls.length];
    for (int i = 0; i < tolls.length; i++) {
      rounded[i] = (int) Math.round(tolls[i]);
    }
    int[] twice = Arrays.copyOf(rounded, tracked.size());
    int[] again = Arrays.copyOfRange(rounded, AGENDAS, rounded.length);
    Guide guide = Guide.tolled(free, reach, sharing, tracked, again, twice, work);
    return new Point(tolls, slope(guide), guide, guide.root(sharing));
  }

  private int[] slope(Guide guide) {
    List<Integer> path = Descent.of(model, sharing, guide, tracked, work);
    int[] slope = new int[AGENDAS + most.size()];
    for (int i = 0; i < most.size(); i++) {
      slope[AGENDAS + i] = -most.get(i);
    }
    int[] uses = new int[model.ids.length];
    for (int candidate : path) {
      uses[candidate]++;
      if (uses[candidate] == 2) {
        tracked.add(candidate);
      }
      for (int i = 0; i < most.size(); i++) {
        slope[AGENDAS + i] += sharing.holds(i, candidate) ? 1 : 0;
      }
    }
    for (int bit = 0; bit < tracked.size(); bit++) {
      slope[bit] = uses[tracked.candidate(bit)] - 1;
    }
    return slope;
  }
}
