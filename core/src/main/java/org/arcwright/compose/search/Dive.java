package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A first agenda: a beam goes item by item from the start, keeping the few labels with the least
 * estimates, and uses no exercise twice. Its price is a ceiling for the proof.
 */
final class Dive {
  private static final int WIDTH = 16;

  private Dive() {}

  /** Number of the cheapest END label found, or -1. */
  static int run(Labels labels, Expander expander) {
    List<Integer> beam = List.of(expander.start());
    int best = -1;
    while (!beam.isEmpty()) {
      List<Integer> next = new ArrayList<>();
      List<Integer> ends = new ArrayList<>();
      for (int label : beam) {
        expander.expand(
            label, child -> (labels.actions[child] == Labels.END ? ends : next).add(child));
      }
      for (int end : ends) {
        if (best < 0 || labels.prices[end] < labels.prices[best]) {
          best = end;
          expander.ceiling = labels.prices[end];
        }
      }
      next.sort(Comparator.comparingLong(label -> labels.estimates[label]));
      beam = narrow(labels, next);
    }
    return best;
  }

  /** The best few, at most two of them in the same state. */
  private static List<Integer> narrow(Labels labels, List<Integer> sorted) {
    List<Integer> kept = new ArrayList<>();
    for (int label : sorted) {
      int alike = 0;
      for (int other : kept) {
        alike += labels.states[other] == labels.states[label] ? 1 : 0;
      }
      if (alike < 2) {
        kept.add(label);
      }
      if (kept.size() == WIDTH) {
        break;
      }
    }
    return kept;
  }
}
