package org.arcwright.compose.search;

/**
 * The cheapest price of each move at each start, over all peers that make the move: the only prices
 * that a relaxation without "no exercise twice" ever pays.
 */
final class Prices {
  private final Model model;
  private final long[][][] cheapest;

  Prices(Model model) {
    this.model = model;
    this.cheapest = new long[model.stages.length][model.cells + 1][];
  }

  /** The packed price of each of the phase's moves at a start. Worked out when first asked. */
  long[] at(Stage stage, int start) {
    long[] row = cheapest[stage.number][start];
    if (row == null) {
      row = new long[stage.moveLength.length];
      for (int k = 0; k < row.length; k++) {
        row[k] = cheapest(stage, k, start);
      }
      cheapest[stage.number][start] = row;
    }
    return row;
  }

  private long cheapest(Stage stage, int move, int start) {
    if (!model.free(start, start + stage.moveLength[move])) {
      return Model.INFINITE;
    }
    long least = Long.MAX_VALUE;
    Peers[] all = stage.movePeers[move];
    for (Peers peers : all) {
      if (model.mayStart(peers, start)) {
        least = Math.min(least, peers.costs[0] + model.energyCost(peers, start));
      }
    }
    long packed = least == Long.MAX_VALUE ? Model.INFINITE : model.pack(least);
    if (packed >= Model.INFINITE) {
      return Model.INFINITE;
    }
    long tie = Long.MAX_VALUE;
    for (Peers peers : all) {
      if (model.mayStart(peers, start)
          && peers.costs[0] + model.energyCost(peers, start) == least) {
        tie = Math.min(tie, leastTie(stage, peers, start));
      }
    }
    return packed + tie;
  }

  private long leastTie(Stage stage, Peers peers, int start) {
    long tie = Long.MAX_VALUE;
    for (int i = 0; i < peers.members.length && peers.costs[i] == peers.costs[0]; i++) {
      tie = Math.min(tie, model.tie(peers.members[i], stage.number, start, peers.length));
    }
    return tie;
  }
}
