package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * One phase in cells and bits, with the moves that lead on within it. A move is all that the bound
 * tells apart: a length, a format, and which of the phase's awaited products it needs and gains.
 */
final class Stage {
  final int number;
  final int fewest;

  /** Most exercises. */
  final int most;

  /** Whether the minutes allow more than the most, so that labels count to the end. */
  final boolean counted;

  final int minCells;
  final int maxCells;

  /** Price of spending so many cells on this phase. */
  final int[] shareCost;

  /** Products that must exist at its end. */
  final long due;

  /** Products that this or a later phase still asks about. */
  final long relevant;

  /** Product bits that the bound follows here, in the order of the bound's own bits. */
  final long[] awaited;

  /** Those of {@link #awaited} that are due at this phase's end, as bound bits. */
  final int awaitedDue;

  /** The bound mask at its start for each one at the end of the phase before. */
  final int[] carried;

  /** Moves, shortest first. */
  final int[] moveLength;

  /** The lengths that moves have, ascending, and the number of the first longer move. */
  final int[] lengths;

  final int[] lengthEnds;

  final int[] moveFormat;
  final int[] moveGain;

  /** Awaited products that must exist before a move, as bound bits. */
  final int[] moveNeed;

  final Peers[][] movePeers;

  Stage(
      int number,
      int fewest,
      int most,
      boolean counted,
      int minCells,
      int maxCells,
      int[] shareCost,
      long due,
      long relevant,
      long[] awaited,
      int[] carried,
      Peers[][] movePeers) {
    this.number = number;
    this.fewest = fewest;
    this.most = most;
    this.counted = counted;
    this.minCells = minCells;
    this.maxCells = maxCells;
    this.shareCost = shareCost;
    this.due = due;
    this.relevant = relevant;
    this.awaited = awaited;
    this.carried = carried;
    this.movePeers = movePeers;
    this.awaitedDue = gather(due);
    this.moveLength = new int[movePeers.length];
    this.moveFormat = new int[movePeers.length];
    this.moveGain = new int[movePeers.length];
    this.moveNeed = new int[movePeers.length];
    for (int i = 0; i < movePeers.length; i++) {
      moveLength[i] = movePeers[i][0].length;
      moveFormat[i] = movePeers[i][0].format;
      moveGain[i] = gather(movePeers[i][0].yields);
      moveNeed[i] = gather(movePeers[i][0].needs);
    }
    this.lengths = Arrays.stream(moveLength).distinct().toArray();
    this.lengthEnds = new int[lengths.length];
    for (int k = 0, l = 0; k < moveLength.length; k++) {
      l += moveLength[k] == lengths[l] ? 0 : 1;
      lengthEnds[l] = k + 1;
    }
  }

  /** The same as if no products were awaited. */
  Stage outline() {
    return new Stage(
        number,
        fewest,
        most,
        counted,
        minCells,
        maxCells,
        shareCost,
        due,
        relevant,
        new long[0],
        new int[] {0},
        movePeers);
  }

  /** Whether no choice of exercises could ever fill it. */
  boolean impossible() {
    return movePeers.length == 0 || minCells > maxCells || (long) fewest * moveLength[0] > maxCells;
  }

  /** Number of bound masks. */
  int masks() {
    return 1 << awaited.length;
  }

  /** The awaited products in {@code products}, as bound bits. */
  int gather(long products) {
    return gather(products, awaited);
  }

  static int gather(long products, long[] awaited) {
    int mask = 0;
    for (int i = 0; i < awaited.length; i++) {
      if ((products & awaited[i]) != 0) {
        mask |= 1 << i;
      }
    }
    return mask;
  }

  /** Whether any of its moves is a candidate's. */
  boolean uses(int candidate) {
    return Arrays.stream(movePeers)
        .flatMap(Arrays::stream)
        .flatMapToInt(peers -> Arrays.stream(peers.members))
        .anyMatch(member -> member == candidate);
  }

  /** The count after one more exercise. */
  int countAfter(int count) {
    return counted ? count + 1 : Math.min(count + 1, fewest);
  }

  /** Whether another exercise may follow after so many. */
  boolean allowsAfter(int count) {
    return !counted || count < most;
  }

  /** Whether the phase may end after so many exercises and cells. */
  boolean complete(int count, int cells) {
    return count >= fewest && cells >= minCells && cells <= maxCells;
  }
}
