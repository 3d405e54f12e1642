package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The exercises for which "not twice" is enforced. Decremental state-space relaxation (Righini and
 * Salani 2008) starts with none and adds those that a cheapest path repeats.
 */
final class Tracked {
  private final int[] bits;
  private int size;

  Tracked(int candidates) {
    bits = new int[candidates];
    Arrays.fill(bits, -1);
  }

  /** The exercise's bit, or 0 if it is not tracked. */
  long bit(int candidate) {
    return bits[candidate] < 0 ? 0 : 1L << bits[candidate];
  }

  /** Tracks an exercise; false if there is no room left. */
  boolean add(int candidate) {
    if (bits[candidate] < 0) {
      if (size == Long.SIZE) {
        return false;
      }
      bits[candidate] = size++;
    }
    return true;
  }

  int size() {
    return size;
  }
}
