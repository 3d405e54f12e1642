package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * A good agenda: a beam goes item by item from the start, keeping the few labels with the least
 * estimates, and uses no exercise twice. Its price is a ceiling for the proof.
 */
final class Dive {
  /** Labels kept for a first agenda, soon. */
  static final int NARROW = 5;

  /** Labels kept for a good one. */
  static final int WIDE = 12;

  /** Most labels kept in one state, for variety. */
  private static final int ALIKE = 2;

  private final Labels labels;
  private final Expander expander;
  private final int width;
  private final int[] kept;
  private int size;
  private int best = -1;

  private Dive(Labels labels, Expander expander, int width) {
    this.labels = labels;
    this.expander = expander;
    this.width = width;
    this.kept = new int[width];
  }

  /**
   * Number of the cheapest END label found, or -1.
   *
   * @param ceiling nothing is looked for that costs as much
   */
  static int run(Labels labels, Expander expander, int width, long ceiling) {
    Dive dive = new Dive(labels, expander, width);
    expander.ceiling = ceiling;
    int[] beam = {expander.start()};
    while (beam.length > 0) {
      dive.size = 0;
      for (int label : beam) {
        expander.expand(label, dive::offer);
      }
      expander.ceiling = dive.best < 0 ? ceiling : labels.prices[dive.best];
      beam = Arrays.copyOf(dive.kept, dive.size);
    }
    return dive.best;
  }

  /** Keeps the label, in order, if it is among the best few so far. */
  private boolean offer(int label) {
    if (labels.actions[label] == Labels.END) {
      best = label;
      expander.ceiling = Math.min(expander.ceiling, labels.prices[label]);
      return true;
    }
    int alike = 0;
    int worstAlike = -1;
    int place = size;
    for (int i = size - 1; i >= 0; i--) {
      if (labels.estimates[kept[i]] > labels.estimates[label]) {
        place = i;
      }
      if (labels.states[kept[i]] == labels.states[label]) {
        alike++;
        worstAlike = Math.max(worstAlike, i);
      }
    }
    int out = alike >= ALIKE ? worstAlike : size == width ? width - 1 : size;
    if (place > out || (place == out && out < size)) {
      return false;
    }
    System.arraycopy(kept, place, kept, place + 1, out - place);
    kept[place] = label;
    size = Math.max(size, out + 1);
    if (size == width) {
      expander.ceiling = Math.min(expander.ceiling, labels.estimates[kept[width - 1]] + 1);
    }
    return true;
  }
}
