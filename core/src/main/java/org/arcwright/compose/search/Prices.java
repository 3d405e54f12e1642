package org.arcwright.compose.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest price of each move at each start, over all peers that make the move: the only prices
 * that a relaxation without "no exercise twice" ever pays. A candidate may be charged a toll.
 */
final class Prices {
  /** Peers, and the least cost of any of them. */
  private record Contender(Peers peers, long cost) {}

  private final Model model;

  /** Cost that each candidate is charged beside its own. */
  final int[] tolls;

  /** Prices of the moves that are charged no toll; none if there are no tolls at all. */
  private final @Nullable Prices free;

  /** For each move; none where it is charged no toll. */
  private final Contender[][][] contenders;

  private final long[][][] cheapest;
  private final Row[][] rows;

  /** Without tolls. */
  Prices(Model model) {
    this(model, new int[model.ids.length], null);
  }

  private Prices(Model model, int[] tolls, @Nullable Prices free) {
    this.model = model;
    this.tolls = tolls;
    this.free = free;
    this.contenders = new Contender[model.stages.length][][];
    this.cheapest = new long[model.stages.length][model.cells + 1][];
    this.rows = new Row[model.stages.length][model.cells + 1];
  }

  /**
   * These with tolls; what is charged none is not priced again.
   *
   * @param tolls a cost for each candidate beside its own, zero or more
   */
  Prices with(int[] tolls) {
    return new Prices(model, tolls, this);
  }

  /** The phase's moves at a start, in order. Worked out when first asked. */
  Row row(Stage stage, int start) {
    Row row = rows[stage.number][start];
    if (row == null) {
      row = new Row(stage, at(stage, start));
      rows[stage.number][start] = row;
    }
    return row;
  }

  /** The packed price of each of the phase's moves at a start. Worked out when first asked. */
  long[] at(Stage stage, int start) {
    long[] prices = cheapest[stage.number][start];
    if (prices == null) {
      prices = cheapest(stage, start);
      cheapest[stage.number][start] = prices;
    }
    return prices;
  }

  private long[] cheapest(Stage stage, int start) {
    Contender[][] moves = contenders[stage.number];
    if (moves == null) {
      moves = Arrays.stream(stage.movePeers).map(this::contenders).toArray(Contender[][]::new);
      contenders[stage.number] = moves;
    }
    long[] prices = free == null ? new long[moves.length] : free.at(stage, start).clone();
    for (int k = 0; k < prices.length; k++) {
      if (moves[k].length > 0) {
        prices[k] =
            model.free(start, start + stage.moveLength[k])
                ? cheapest(stage, moves[k], start)
                : Model.INFINITE;
      }
    }
    return prices;
  }

  /** The peers of a move that are cheapest at some start, and pinned ones. */
  private Contender[] contenders(Peers[] all) {
    if (free != null && !charged(all)) {
      return new Contender[0];
    }
    Contender[] contenders = new Contender[all.length];
    int size = 0;
    for (Peers peers : all) {
      contenders[size++] = new Contender(peers, leastCost(peers));
    }
    if (size > 1) {
      size = drop(contenders);
    }
    return Arrays.copyOf(contenders, size);
  }

  private boolean charged(Peers[] all) {
    for (Peers peers : all) {
      for (int member : peers.members) {
        if (tolls[member] > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Moves those that are not beaten to the front and tells how many they are. */
  private int drop(Contender[] contenders) {
    long[] best = new long[model.energyLevels.length];
    Arrays.fill(best, Model.INFINITE);
    for (Contender contender : contenders) {
      if (!contender.peers.pinned) {
        int energy = contender.peers.energy;
        best[energy] = Math.min(best[energy], contender.cost);
      }
    }
    int size = 0;
    for (Contender contender : contenders) {
      if (contender.peers.pinned || !beaten(contender, best)) {
        contenders[size++] = contender;
      }
    }
    return size;
  }

  private boolean beaten(Contender contender, long[] best) {
    Peers peers = contender.peers;
    for (int energy = 0; energy < best.length; energy++) {
      if (best[energy] + model.energyGap(energy, peers.energy, peers.length) < contender.cost) {
        return true;
      }
    }
    return false;
  }

  private long cheapest(Stage stage, Contender[] move, int start) {
    long least = Long.MAX_VALUE;
    for (Contender contender : move) {
      if (model.mayStart(contender.peers, start)) {
        least = Math.min(least, contender.cost + model.energyCost(contender.peers, start));
      }
    }
    long packed = least == Long.MAX_VALUE ? Model.INFINITE : model.pack(least);
    if (packed >= Model.INFINITE) {
      return Model.INFINITE;
    }
    long tie = Long.MAX_VALUE;
    for (Contender contender : move) {
      if (model.mayStart(contender.peers, start)
          && contender.cost + model.energyCost(contender.peers, start) == least) {
        tie = Math.min(tie, leastTie(stage, contender, start));
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

  private long leastTie(Stage stage, Contender contender, int start) {
    Peers peers = contender.peers;
    long tie = Long.MAX_VALUE;
    for (int i = 0; i < peers.members.length && peers.costs[i] <= contender.cost; i++) {
      int candidate = peers.members[i];
      if ((long) peers.costs[i] + tolls[candidate] == contender.cost) {
        tie = Math.min(tie, model.tie(candidate, stage.number, start, peers.length));
      }
    }
    return tie;
  }

  /**
   * The moves that can start at one time: for each length those that are worth it, cheapest first.
   */
  static final class Row {
    /** Where the moves of each length end in the arrays below; they begin where the last end. */
    final int[] ends;

    final long[] price;
    final char[] format;

    /** Awaited products needed and gained. */
    final byte[] need;

    final byte[] gain;

    private final long[] cheapest;

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
