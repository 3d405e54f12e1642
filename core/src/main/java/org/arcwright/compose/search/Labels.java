package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The labels of a search, each a partial agenda, in parallel arrays: 69 octets a label and no
 * object. A label knows its state, its price so far, the products that exist, which tracked
 * exercises it has used, and the label before it.
 */
final class Labels {
  static final int BREAK = -1;
  static final int MEAL = -2;
  static final int START = -3;
  static final int END = -4;

  /** Phase, meals, count, cells, time and stretch; see {@link #state}. */
  long[] states = new long[256];

  /** Packed price so far. */
  long[] prices = new long[256];

  /** Least packed price of the whole agenda. */
  long[] estimates = new long[256];

  long[] products = new long[256];
  long[] visited = new long[256];

  /** What is shared with earlier agendas; see {@link Sharing}. */
  long[] shared = new long[256];

  int[] parents = new int[256];

  /** Candidate number, or what else it is. */
  int[] actions = new int[256];

  /** What the last exercise bars; see {@link Neighbours}. */
  int[] wakes = new int[256];

  /** Length and last format. */
  short[] lengths = new short[256];

  short[] formats = new short[256];

  /** Exercise cells so far. */
  short[] exercised = new short[256];

  /** Whether another label dominates it; it stays where it is, for the queue's order. */
  boolean[] dropped = new boolean[256];

  private int size;

  /** Packs a state into 45 bits. */
  static long state(int phase, int meals, int count, int cells, int time, int stretch) {
    return ((((((long) phase << 8 | meals) << 9 | count) << 9 | cells) << 9 | time) << 6 | stretch);
  }

  int phase(int label) {
    return (int) (states[label] >> 41);
  }

  int meals(int label) {
    return (int) (states[label] >> 33) & 0xFF;
  }

  int count(int label) {
    return (int) (states[label] >> 24) & 0x1FF;
  }

  int cells(int label) {
    return (int) (states[label] >> 15) & 0x1FF;
  }

  int time(int label) {
    return (int) (states[label] >> 6) & 0x1FF;
  }

  int stretch(int label) {
    return (int) states[label] & 0x3F;
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  /** Adds a label and returns its number. */
  int add(int parent, int action, int length, long state, long price, long estimate) {
    if (size == states.length) {
      grow();
    }
    int label = size++;
    states[label] = state;
    prices[label] = price;
    estimates[label] = estimate;
    parents[label] = parent;
    actions[label] = action;
    lengths[label] = (short) length;
    dropped[label] = false;
    return label;
  }

  /** Takes back the label added last. */
  void removeLast() {
    size--;
  }

  /** Whether a candidate stands on the way to a label. */
  boolean onPath(int label, int candidate) {
    for (int at = label; actions[at] != START; at = parents[at]) {
      if (actions[at] == candidate) {
        return true;
      }
    }
    return false;
  }

  private void grow() {
    int larger = size * 2;
    states = Arrays.copyOf(states, larger);
    prices = Arrays.copyOf(prices, larger);
    estimates = Arrays.copyOf(estimates, larger);
    products = Arrays.copyOf(products, larger);
    visited = Arrays.copyOf(visited, larger);
    shared = Arrays.copyOf(shared, larger);
    parents = Arrays.copyOf(parents, larger);
    actions = Arrays.copyOf(actions, larger);
    wakes = Arrays.copyOf(wakes, larger);
    lengths = Arrays.copyOf(lengths, larger);
    formats = Arrays.copyOf(formats, larger);
    exercised = Arrays.copyOf(exercised, larger);
    dropped = Arrays.copyOf(dropped, larger);
  }
}
