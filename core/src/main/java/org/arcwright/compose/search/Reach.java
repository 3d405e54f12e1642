package org.arcwright.compose.search;

/**
 * Which states of a relaxation can be reached from the start. At each node the stretches that can
 * stand there are the bits of one long; states are numbered only where they exist, so that tables
 * stay small: time and space are linear in the nodes times the lengths.
 */
final class Reach {
  /** Most values that a bound may have. */
  static final long MOST = 24_000_000;

  final Nodes nodes;

  /** The phases, as the relaxation sees them. */
  final Stage[] stages;

  /** Stretches that can stand at each node. */
  final long[] stretches;

  /** Number of each node's first value; the values of a node's states follow each other. */
  final int[] first;

  /** How many values a bound has: one for each state and bound mask. */
  final long values;

  /**
   * @param stretches that can stand at each node, as bits
   */
  Reach(Nodes nodes, Stage[] stages, long[] stretches) {
    this.nodes = nodes;
    this.stages = stages;
    this.stretches = stretches;
    this.first = new int[stretches.length];
    long sum = 0;
    int node = 0;
    for (int t = 0; t <= nodes.model.cells; t++) {
      for (Stage stage : stages) {
        for (int end = node + nodes.width(stage.number); node < end; node++) {
          first[node] = (int) Math.min(Integer.MAX_VALUE, sum);
          sum += (long) Long.bitCount(stretches[node]) * stage.masks();
        }
      }
    }
    this.values = sum;
  }

  /** All that can be reached by moves that can start where they have to. */
  static Reach of(Nodes nodes, Stage[] stages, Prices prices, Work work) {
    return new Reach(nodes, stages, new Spread(nodes, stages, prices, work).run());
  }

  /** Whether a stretch can stand at a node. */
  boolean has(int node, int stretch) {
    return (stretches[node] >> stretch & 1) != 0;
  }

  /** Number of the first value of a state that there is. */
  int value(int node, int stretch, Stage stage) {
    return first[node] + rank(stretches[node], stretch) * stage.masks();
  }

  /** How many of some stretches are shorter than one. */
  static int rank(long stretches, int stretch) {
    return Long.bitCount(stretches & ((1L << stretch) - 1));
  }
}
