package org.arcwright.compose.search;

/**
 * The cheapest price of each move at each start, over all peers that make the move: the only prices
 * that a relaxation without "no exercise twice" ever pays. A candidate may be charged a toll.
 */
final class Prices {
  private final Model model;
  private final int[] tolls;
  private final Row[][] rows;

  /** Without tolls. */
  Prices(Model model) {
    this(model, new int[model.ids.length]);
  }

  /**
   * @param tolls a cost for each candidate beside its own, zero or more
   */
  Prices(Model model, int[] tolls) {
    this.model = model;
    this.tolls = tolls;
    this.rows = new Row[model.stages.length][model.cells + 1];
  }

  /** The packed price of each of the phase's moves at a start. */
  long[] at(Stage stage, int start) {
    return row(stage, start).cheapest;
  }

  /** The phase's moves at a start. Worked out when first asked. */
  Row row(Stage stage, int start) {
    Row row = rows[stage.number][start];
    if (row == null) {
      row = new Row(stage, cheapest(stage, start));
      rows[stage.number][start] = row;
    }
    return row;
  }

  private long[] cheapest(Stage stage, int start) {
    long[] cheapest = new long[stage.moveLength.length];
    for (int k = 0; k < cheapest.length; k++) {
      cheapest[k] = cheapest(stage, k, start);
    }
    return cheapest;
  }

  private long cheapest(Stage stage, int move, int start) {
    if (!model.free(start, start + stage.moveLength[move])) {
      return Model.INFINITE;
    }
    long least = Long.MAX_VALUE;
    Peers[] all = stage.movePeers[move];
    for (Peers peers : all) {
      if (model.mayStart(peers, start)) {
        least = Math.min(least, leastCost(peers) + model.energyCost(peers, start));
      }
    }
    long packed = least == Long.MAX_VALUE ? Model.INFINITE : model.pack(least);
    if (packed >= Model.INFINITE) {
      return Model.INFINITE;
    }
    long tie = Long.MAX_VALUE;
    for (Peers peers : all) {
      if (model.mayStart(peers, start)
          && leastCost(peers) + model.energyCost(peers, start) == least) {
        tie = Math.min(tie, leastTie(stage, peers, start));
      }
    }
    return packed + tie;
  }

  private long leastCost(Peers peers) {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < peers.members.length && peers.costs[i] < least; i++) {
      least = Math.min(least, (long) peers.costs[i] + tolls[peers.members[i]]);
    }
    return least;
  }

  private long leastTie(Stage stage, Peers peers, int start) {
    long least = leastCost(peers);
    long tie = Long.MAX_VALUE;
    for (int i = 0; i < peers.members.length && peers.costs[i] <= least; i++) {
      int candidate = peers.members[i];
      if ((long) peers.costs[i] + tolls[candidate] == least) {
        tie = Math.min(tie, model.tie(candidate, stage.number, start, peers.length));
      }
    }
    return tie;
  }

  /**
   * The moves that can start at one time: for each length those that are worth it, cheapest first.
   */
  static final class Row {
    /** Price of each move by its number. */
    final long[] cheapest;

    /** Where the moves of each length end in the arrays below; they begin where the last end. */
    final int[] ends;

    final long[] price;
    final char[] format;

    /** Awaited products needed and gained. */
    final byte[] need;

    final byte[] gain;

    Row(Stage stage, long[] cheapest) {
      this.cheapest = cheapest;
      int[] kept = new int[cheapest.length];
      int size = 0;
      this.ends = new int[stage.lengths.length];
      int from = 0;
      for (int l = 0; l < ends.length; l++) {
        int begin = size;
        for (int k = from; k < stage.lengthEnds[l]; k++) {
          size = insert(stage, kept, begin, size, k);
        }
        from = stage.lengthEnds[l];
        ends[l] = size;
      }
      this.price = new long[size];
      this.format = new char[size];
      this.need = new byte[size];
      this.gain = new byte[size];
      for (int i = 0; i < size; i++) {
        int k = kept[i];
        price[i] = cheapest[k];
        format[i] = (char) stage.moveFormat[k];
        need[i] = (byte) stage.moveNeed[k];
        gain[i] = (byte) stage.moveGain[k];
      }
    }

    /** Puts a move in its place by price, unless a cheaper one does as well in every respect. */
    private int insert(Stage stage, int[] kept, int begin, int size, int move) {
      if (cheapest[move] >= Model.INFINITE) {
        return size;
      }
      int place = size;
      while (place > begin && cheapest[kept[place - 1]] > cheapest[move]) {
        place--;
      }
      for (int i = begin; i < place; i++) {
        if (doesAsWell(stage, kept[i], move)) {
          return size;
        }
      }
      System.arraycopy(kept, place, kept, place + 1, size - place);
      kept[place] = move;
      return size + 1;
    }

    private static boolean doesAsWell(Stage stage, int move, int other) {
      return stage.moveFormat[move] == stage.moveFormat[other]
          && (stage.moveNeed[move] & ~stage.moveNeed[other]) == 0
          && (stage.moveGain[other] & ~stage.moveGain[move]) == 0;
    }

    int from(int length) {
      return length == 0 ? 0 : ends[length - 1];
    }

    /** Whether no move of that length can start. */
    boolean none(int length) {
      return from(length) == ends[length];
    }
  }
}
