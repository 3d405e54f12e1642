package org.arcwright.compose.search;

import java.util.List;

/** What it costs at least to finish from a state: the most that any of some guides says. */
final class Completion {
  private final Guide[] guides;
  private final Sharing sharing;
  private final long[] afters;

  Completion(List<Guide> guides, Sharing sharing) {
    this.guides = guides.toArray(Guide[]::new);
    this.sharing = sharing;
    this.afters = new long[this.guides.length];
  }

  /** Least price of a whole agenda. */
  long root() {
    long most = Long.MIN_VALUE;
    for (Guide guide : guides) {
      most = Math.max(most, guide.root(sharing));
    }
    return most;
  }

  /** Turns to a state, described as for {@link Bound#at}; false if none can finish from there. */
  boolean turnTo(
      int time, int phase, int meals, int count, int cells, int stretch, int last, int mask) {
    for (int i = 0; i < guides.length; i++) {
      afters[i] = guides[i].bound.at(time, phase, meals, count, cells, stretch, last, mask);
      if (afters[i] >= Model.INFINITE) {
        return false;
      }
    }
    return true;
  }

  /** Least price to finish from the state with such counts of what is shared. */
  long rest(long counts) {
    long most = Long.MIN_VALUE;
    for (int i = 0; i < guides.length; i++) {
      most = Math.max(most, afters[i] - guides[i].back(sharing, counts));
    }
    return most;
  }

  /** Least price of a move to the state and of finishing, with such counts before the move. */
  long rest(Stage stage, int move, int start, long counts) {
    long most = Long.MIN_VALUE;
    for (int i = 0; i < guides.length; i++) {
      long price = guides[i].prices.at(stage, start)[move];
      most = Math.max(most, price + afters[i] - guides[i].back(sharing, counts));
    }
    return most;
  }
}
