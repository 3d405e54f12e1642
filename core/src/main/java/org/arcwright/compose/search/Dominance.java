package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * Keeps, for each state, the labels that no other one dominates. A label dominates another if all
 * that may follow the other may follow it, at a price no higher in the end: it has the other's
 * products and more, none of the tracked exercises that the other still has free, as few exercise
 * cells (so that its buffer is no longer), counts no more against any rule, bars nobody whom the
 * other does not bar as next exercise, and a price lower by what a different last format and a
 * shorter buffer may yet cost it.
 */
final class Dominance {
  private static final int FACTS = 4;

  private final Model model;
  private final Labels labels;
  private final Sharing sharing;

  /** Open addressing from state to the first of its labels; 0 is no state, for time is over 0. */
  private long[] keys = new long[1 << 10];

  private int[] heads = new int[1 << 10];

  /** The next label of the same state, which has no lower price. */
  private int[] nexts = new int[256];

  /** What most often tells labels apart, side by side, for one look at memory to find it. */
  private long[] facts = new long[256 * FACTS];

  private int used;

  Dominance(Model model, Labels labels, Sharing sharing) {
    this.sharing = sharing;
    this.model = model;
    this.labels = labels;
  }

  void clear() {
    Arrays.fill(keys, 0);
    used = 0;
  }

  /** Keeps a label unless another one dominates it; those that it dominates are dropped. */
  boolean keep(int label) {
    int slot = slot(labels.states[label]);
    if (keys[slot] == 0) {
      if (used * 2 >= keys.length) {
        rehash();
        slot = slot(labels.states[label]);
      }
      keys[slot] = labels.states[label];
      heads[slot] = -1;
      used++;
    }
    note(label);
    int before = -1;
    int other = heads[slot];
    while (other >= 0 && facts[other * FACTS] <= labels.prices[label]) {
      if (dominates(other, label)) {
        return false;
      }
      before = other;
      other = nexts[other];
    }
    nexts[label] = other;
    if (before < 0) {
      heads[slot] = label;
    } else {
      nexts[before] = label;
    }
    before = label;
    for (; other >= 0; other = nexts[other]) {
      if (dominates(label, other)) {
        labels.dropped[other] = true;
        nexts[before] = nexts[other];
      } else {
        before = other;
      }
    }
    return true;
  }

  private void note(int label) {
    if (label >= nexts.length) {
      nexts = Arrays.copyOf(nexts, Math.max(label + 1, nexts.length * 2));
      facts = Arrays.copyOf(facts, nexts.length * FACTS);
    }
    int at = label * FACTS;
    facts[at] = labels.prices[label];
    facts[at + 1] = labels.shared[label];
    facts[at + 2] = labels.visited[label];
    facts[at + 3] = labels.products[label];
  }

  private boolean dominates(int a, int b) {
    int one = a * FACTS;
    int two = b * FACTS;
    if (!sharing.within(facts[one + 1], facts[two + 1])
        || (facts[one + 2] & ~facts[two + 2]) != 0
        || (facts[two + 3] & ~facts[one + 3]) != 0
        || !model.neighbours.within(labels.wakes[a], labels.wakes[b])) {
      return false;
    }
    int shorter = labels.exercised[b] - labels.exercised[a];
    if (shorter < 0) {
      return false;
    }
    long handicap = shorter == 0 ? 0 : model.idle(model.buffer(shorter));
    if (labels.formats[a] != labels.formats[b]) {
      handicap +=
          labels.stretch(a) == 0
              ? model.monotonyAcrossBreak
              : Math.max(model.monotony, model.monotonyAcrossBreak);
    }
    return labels.prices[a] + handicap <= labels.prices[b];
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> 40) & mask;
    while (keys[slot] != 0 && keys[slot] != key) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void rehash() {
    long[] oldKeys = keys;
    int[] oldHeads = heads;
    keys = new long[oldKeys.length * 2];
    heads = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != 0) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        heads[slot] = oldHeads[i];
      }
    }
  }
}
