package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;

/**
 * The candidates of one phase that are alike but for their lengths and prices, while a model is
 * built: for each length in cells, price and candidate in one long, which sorts them.
 */
final class Alike {
  private static final int FOLLOWED = ModelBuilder.DUE;

  /** Formats are fewer than candidates. */
  private static final int SHIFT = Integer.SIZE + 2 * FOLLOWED;

  private final Peers.Key key;
  private long[][] entries = {};
  private int[] sizes = {};

  Alike(Peers.Key key) {
    this.key = key;
  }

  /** Adds a candidate of a length at a price, zero or more. */
  void add(int length, int price, int candidate) {
    if (length >= entries.length) {
      entries = Arrays.copyOf(entries, length + 1);
      sizes = Arrays.copyOf(sizes, length + 1);
    }
    int size = sizes[length]++;
    if (size == 0) {
      entries[length] = new long[2];
    } else if (size == entries[length].length) {
      entries[length] = Arrays.copyOf(entries[length], 2 * size);
    }
    entries[length][size] = (long) price << Integer.SIZE | candidate;
  }

  /**
   * Adds the peers of each length to a list.
   *
   * @param awaited the products that the bound follows
   */
  void addPeers(List<Peers> all, long[] awaited) {
    long gain = Stage.gather(key.yields(), awaited);
    long need = Stage.gather(key.needs(), awaited);
    long rest = ((long) key.format() << FOLLOWED | gain) << FOLLOWED | need;
    for (int length = 0; length < entries.length; length++) {
      int size = sizes[length];
      if (size > 0) {
        Arrays.sort(entries[length], 0, size);
        int[] members = new int[size];
        int[] costs = new int[size];
        for (int i = 0; i < size; i++) {
          members[i] = (int) entries[length][i];
          costs[i] = (int) (entries[length][i] >>> Integer.SIZE);
        }
        all.add(new Peers(key, length, (long) length << SHIFT | rest, members, costs));
      }
    }
  }
}
