package org.arcwright.compose.search;

/** What it costs at least to finish from a state, as a guide sees it. */
final class Completion {
  private final Guide guide;
  private final Sharing sharing;
  private int stage;
  private int state;
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

  /** Turns to a state but for its format and products; false if it cannot be reached. */
  boolean turnTo(int time, int phase, int meals, int count, int cells, int stretch) {
    this.stage = phase;
    this.state = guide.bound.state(time, phase, meals, count, cells, stretch);
    return state >= 0;
  }

  /** Turns to the state's last format and bound mask; false if none can finish from there. */
  boolean turnTo(int last, int mask) {
    this.after = guide.bound.at(state, stage, last, mask);
    return after < Model.INFINITE;
  }

  /** Least price to finish from the state, if nothing is given back. */
  long after() {
    return after;
  }

  /**
   * What is given back of the tolls: those of all that may still be used.
   *
   * @param counts of what is shared
   * @param visited tracked exercises that the phase or a later one could use
   */
  long back(int phase, long counts, long visited) {
    return guide.back(sharing, counts, phase, visited);
  }
}
