package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;
import org.arcwright.compose.instance.Instance;

/**
 * An instance in cells, numbers and bits, with all that can be worked out before the search: what
 * may start where, and the price of everything. Prices are packed: the cost in the upper bits, the
 * tie in the lower {@link #shift}, so that one comparison of longs compares both in order.
 */
final class Model {
  /** More than any price. */
  static final long INFINITE = Long.MAX_VALUE / 16;

  final int grid;
  final int cells;
  final int shift;
  final int longestStretch;
  final int breakCells;
  final int[] mealFrom;
  final int[] mealCells;
  final Stage[] stages;

  /** The phases without formats and products. */
  final Stage[] outline;

  final String[] ids;

  /** Energies that candidates have, in tenths. */
  final int[] energyLevels;

  /** The candidate that must start at a cell, or -1. */
  final int[] pinAt;

  final int lastPin;

  /** Who may not follow whom. */
  final Neighbours neighbours;

  /** Of whom there are only so many. */
  final List<AtMost> atMost;

  final long monotony;
  final long monotonyAcrossBreak;
  final long pause;

  /**
   * Multiplier for "as many breaks as were taken": a bound does not know how many breaks led to a
   * state, so that it could end with the short buffer of many breaks without paying for them. Each
   * break taken is credited this, each one assumed at the end is charged it (Lagrangian relaxation,
   * Geoffrion 1974). Any value is valid; this one is what a break's shorter buffer leaves idle.
   */
  final long toll;

  private final Facts facts;
  private final long[] idle;
  private final long[] rhythm;
  private final int[][] energySum;
  private final long energyPerCell;
  private final int[][] prefixes;

  Model(Facts facts, Stage[] stages) {
    this.facts = facts;
    this.grid = facts.grid;
    this.cells = facts.cells;
    this.longestStretch = facts.longestStretch;
    this.breakCells = facts.breakCells;
    this.mealFrom = facts.mealFrom;
    this.mealCells = facts.mealCells;
    this.stages = stages;
    this.outline = Arrays.stream(stages).map(Stage::outline).toArray(Stage[]::new);
    this.ids = facts.ids;
    this.pinAt = facts.pins.at;
    this.lastPin = facts.pins.last;
    this.neighbours = facts.neighbours;
    this.atMost = facts.atMost;
    this.shift = facts.shift;
    this.energyLevels = facts.energyLevels;
    this.energySum = facts.energySum;
    Instance.Weights weights = facts.instance.weights();
    this.energyPerCell = (long) weights.energy() * grid;
    this.monotony = pack(weights.monotony());
    this.monotonyAcrossBreak = pack(weights.monotonyAcrossBreak());
    this.pause = pack(weights.pause());
    this.toll = pack(facts.idle(breakCells) * facts.instance.bufferPercent() / 100);
    this.idle = new long[cells + 1];
    for (int left = 0; left <= cells; left++) {
      idle[left] = pack(facts.idle(left));
    }
    this.rhythm = new long[longestStretch + 1];
    for (int s = 0; s <= longestStretch; s++) {
      rhythm[s] = pack(facts.rhythm(s));
    }
    this.prefixes = new int[stages.length + 1][];
  }

  /** A cost without a tie; too large a one counts as impossible. */
  long pack(long cost) {
    return cost >= INFINITE >> shift ? INFINITE : cost << shift;
  }

  /** The cost in a packed price. */
  long cost(long price) {
    return price >> shift;
  }

  /** The tie in a packed price. */
  long tie(long price) {
    return price & ((1L << shift) - 1);
  }

  /** Price of a stretch of so many cells that ends at an ordinary break, or at the end. */
  long rhythm(int stretch) {
    return rhythm[stretch];
  }

  /** Price of so many cells left over. */
  long idle(int left) {
    return idle[left];
  }

  /** Ordinary breaks taken by a time, after so many meals and exercise cells. */
  int breaks(int time, int mealsHad, int exerciseCells) {
    int rested = time - exerciseCells;
    for (int j = 0; j < mealsHad; j++) {
      rested -= mealCells[j];
    }
    return rested == 0 ? 0 : rested / breakCells;
  }

  /** Closing buffer in cells for so many exercise cells. */
  int buffer(int exerciseCells) {
    return facts.buffer(exerciseCells);
  }

  /** Cost, without tie, of the energy of one of the peers that starts at a cell. */
  long energyCost(Peers peers, int start) {
    int[] sum = energySum[peers.energy];
    return sum[start + peers.length] - (long) sum[start];
  }

  /** The most by which energy may cost more for one level than for another over so many cells. */
  long energyGap(int level, int other, int length) {
    return energyPerCell * length * Math.abs((long) energyLevels[level] - energyLevels[other]);
  }

  /** Tie of a candidate in a phase. */
  long tie(int candidate, int phase, int start, int length) {
    int[] row = prefixes[phase];
    if (row == null) {
      row = new int[ids.length];
      prefixes[phase] = row;
    }
    if (row[candidate] == 0) {
      row[candidate] = Ties.prefix(ids[candidate], phase);
    }
    return Ties.item(row[candidate], start * grid, length * grid);
  }

  /** Tie of a break. */
  long breakTie(int start, int length) {
    return Ties.item(Ties.breakPrefix(), start * grid, length * grid);
  }

  /** The last phase that can use a candidate; -1 if none can. */
  int lastPhase(int candidate) {
    int phase = stages.length - 1;
    while (phase >= 0 && !stages[phase].uses(candidate)) {
      phase--;
    }
    return phase;
  }

  /** Whether something may last from one cell to another without running over a pinned start. */
  boolean free(int start, int end) {
    return facts.free(start, end);
  }

  /** Whether the next meal, after so many, may start at a cell. */
  boolean mealMayStart(int mealsHad, int start) {
    return facts.mealMayStart(mealsHad, start);
  }

  /** Whether a move may start at a cell: a pinned start belongs to its own candidate alone. */
  boolean mayStart(Peers peers, int start) {
    return peers.pinned ? pinAt[start] == peers.members[0] : pinAt[start] < 0;
  }
}
