package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The exercises for which "not twice" is enforced. Decremental state-space relaxation (Righini and
 * Salani 2008) starts with none and adds those that a cheapest path repeats.
 */
final class Tracked {
  private final Model model;
  private final int[] bits;
  private final long[] ahead;
  private final int[] candidates = new int[Long.SIZE];
  private int size;

  Tracked(Model model) {
    this.model = model;
    this.bits = new int[model.ids.length];
    this.ahead = new long[model.stages.length];
    Arrays.fill(bits, -1);
  }

  /** The exercise's bit, or 0 if it is not tracked. */
  long bit(int candidate) {
    return bits[candidate] < 0 ? 0 : 1L << bits[candidate];
  }

  /** Bits of the exercises that a phase or a later one can use: who used others loses nothing. */
  long ahead(int phase) {
    return ahead[phase];
  }

  /** Tracks an exercise; false if there is no room left. */
  boolean add(int candidate) {
    if (bits[candidate] < 0) {
      if (size == Long.SIZE) {
        return false;
      }
      candidates[size] = candidate;
      bits[candidate] = size++;
      for (int p = model.lastPhase(candidate); p >= 0; p--) {
        ahead[p] |= bit(candidate);
      }
    }
    return true;
  }

  /** The exercise of a bit. */
  int candidate(int bit) {
    return candidates[bit];
  }

  int size() {
    return size;
  }
}
