package org.arcwright.compose.search;

/** What it costs at least to finish from a state, as a guide sees it. */
final class Completion {
  private final Guide guide;
  private final Sharing sharing;
  private int phase;
  private long after;

  Completion(Guide guide, Sharing sharing) {
    this.guide = guide;
    this.sharing = sharing;
  }

  /** Least price of a whole agenda. */
  long root() {
    return guide.root(sharing);
  }

  /** The least price of each of a phase's moves at a start; infinite where it cannot start. */
  long[] moves(Stage stage, int start) {
    return guide.prices.at(stage, start);
  }

  /** Turns to a state, described as for {@link Bound#at}; false if none can finish from there. */
  boolean turnTo(
      int time, int phase, int meals, int count, int cells, int stretch, int last, int mask) {
    this.phase = phase;
    this.after = guide.bound.at(time, phase, meals, count, cells, stretch, last, mask);
    return after < Model.INFINITE;
  }

  /**
   * Least price to finish from the state.
   *
   * @param counts of what is shared
   * @param visited tracked exercises that this phase or a later one could use
   */
  long rest(long counts, long visited) {
    return after - guide.back(sharing, counts, phase, visited);
  }
}
