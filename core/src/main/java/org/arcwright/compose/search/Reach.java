package org.arcwright.compose.search;

/**
 * Which states of the relaxation can be reached from the start. A node is a time, a phase, the
 * meals had, and the exercises and cells spent on the phase; the stretches that can stand there are
 * the bits of one long. States are numbered only where they exist, so that the bound's tables stay
 * small: time and space are linear in the nodes times the lengths.
 *
 * <p>Exercises are counted up to a phase's fewest; beyond that the cells spent tell enough, unless
 * so few more are allowed that counting them is cheap.
 */
final class Reach {
  /** Most nodes, and most values, that a table may have; beyond them the bound is coarser. */
  private static final long MOST = 24_000_000;

  /** Where at most so many exercises over the fewest are allowed, they are counted. */
  private static final int FEW_MORE = 1;

  final Model model;

  /** Whether nodes tell cells apart; a coarse bound does not. */
  final boolean exact;

  /** Stretches that can stand at each node. */
  final long[] stretches;

  /** Number of the node's first value; the values of a node's states follow each other. */
  final int[] first;

  private final int width;
  private final int[] phaseOffset;
  private final int[] mealSize;
  private final boolean[] counted;
  private final int[] counts;
  private final int[] cellSize;
  private final int[] latest;
  private final Prices prices;
  private final Work work;
  private long values;

  private Reach(Model model, Prices prices, Work work, boolean exact) {
    this.model = model;
    this.prices = prices;
    this.work = work;
    this.exact = exact;
    int phases = model.stages.length;
    this.phaseOffset = new int[phases];
    this.mealSize = new int[phases];
    this.counted = new boolean[phases];
    this.counts = new int[phases];
    this.cellSize = new int[phases];
    int offset = 0;
    for (int p = 0; p < phases; p++) {
      Stage stage = model.stages[p];
      phaseOffset[p] = offset;
      counted[p] = counted(stage, exact);
      counts[p] = counts(stage, exact);
      cellSize[p] = exact ? stage.maxCells + 1 : 1;
      mealSize[p] = 1 + counts[p] * cellSize[p];
      offset += mealSize[p] * (model.mealFrom.length + 1);
    }
    this.width = offset;
    this.stretches = new long[width * (model.cells + 1)];
    this.first = new int[stretches.length];
    this.latest = latest(model);
  }

  /** The exact reach where its tables stay within reason, else a coarse one. */
  static Reach of(Model model, Prices prices, Work work) {
    if (nodes(model) <= MOST) {
      Reach reach = new Reach(model, prices, work, true).forward();
      if (reach.values <= MOST) {
        return reach;
      }
    }
    return new Reach(model, prices, work, false).forward();
  }

  private static boolean counted(Stage stage, boolean exact) {
    return exact && stage.counted && stage.most <= stage.fewest + FEW_MORE;
  }

  /** Highest count told apart. */
  private static int counts(Stage stage, boolean exact) {
    return counted(stage, exact) ? stage.most : Math.min(stage.fewest, stage.maxCells + 1);
  }

  private static long nodes(Model model) {
    long sum = 0;
    for (Stage stage : model.stages) {
      sum += 1 + (long) counts(stage, true) * (stage.maxCells + 1);
    }
    return sum * (model.mealFrom.length + 1) * (model.cells + 1);
  }

  /** For each phase, the latest time at which an exercise of it may end. */
  private static int[] latest(Model model) {
    int phases = model.stages.length;
    int[] least = new int[phases];
    int all = 0;
    for (int p = 0; p < phases; p++) {
      Stage stage = model.stages[p];
      int shortest = stage.moveLength[0];
      least[p] = (int) Math.min(10_000L, Math.max(stage.minCells, (long) stage.fewest * shortest));
      all += least[p];
    }
    int[] latest = new int[phases];
    int rest = model.buffer(all);
    for (int p = phases - 1; p >= 0; p--) {
      latest[p] = model.cells - rest;
      rest += least[p];
    }
    return latest;
  }

  /** How many values the bound has: one for each state and bound mask. */
  int values() {
    return (int) values;
  }

  /** The node's number; a count of 0 is the phase's beginning. */
  int node(int time, int phase, int meals, int count, int cells) {
    int begin = time * width + phaseOffset[phase] + meals * mealSize[phase];
    if (count == 0) {
      return begin;
    }
    int c = Math.min(count, counts[phase]) - 1;
    return begin + 1 + c * cellSize[phase] + (exact ? cells : 0);
  }

  /** Highest count told apart in a phase. */
  int counts(int phase) {
    return counts[phase];
  }

  /** How many numbers of cells are told apart in a phase. */
  int cellSize(int phase) {
    return cellSize[phase];
  }

  /** Whether a phase may end at a node, as far as the bound can tell. */
  boolean complete(Stage stage, int count, int cells) {
    return count >= Math.min(stage.fewest, counts[stage.number])
        && (!exact || (cells >= stage.minCells && cells <= stage.maxCells));
  }

  /** The count after one more exercise, as the bound follows it; -1 if there may be none. */
  int next(Stage stage, int count) {
    int p = stage.number;
    return count < counts[p] ? count + 1 : counted[p] ? -1 : count;
  }

  private Reach forward() {
    int phases = model.stages.length;
    int mealCount = model.mealFrom.length;
    stretches[node(0, 0, 0, 0, 0)] = 1;
    for (int t = 0; t <= model.cells; t++) {
      for (int p = 0; p < phases; p++) {
        for (int j = 0; j <= mealCount; j++) {
          long leaving = spread(model.stages[p], j, t);
          if (leaving != 0 && p + 1 < phases) {
            stretches[node(t, p + 1, j, 0, 0)] |= leaving;
          }
        }
      }
      work.add(width / 8);
    }
    number();
    return this;
  }

  /** Goes on from all nodes of a phase at a time; returns the stretches with which it may end. */
  private long spread(Stage stage, int meals, int t) {
    int p = stage.number;
    int node = node(t, p, meals, 0, 0);
    if (stretches[node] != 0) {
      exercises(stage, meals, next(stage, 0), 0, t, stretches[node]);
    }
    long leaving = 0;
    for (int c = 1; c <= counts[p]; c++) {
      int next = next(stage, c);
      for (int m = 0; m < cellSize[p]; m++) {
        long bits = stretches[++node];
        if (bits == 0) {
          continue;
        }
        leaving |= complete(stage, c, m) ? bits : 0;
        if (next >= 0) {
          exercises(stage, meals, next, m, t, bits);
        }
        if ((bits & ~1L) != 0 && model.pinAt[t] < 0) {
          pauses(stage, meals, c, m, t);
        }
      }
    }
    return leaving;
  }

  private void exercises(Stage stage, int meals, int count, int cells, int t, long bits) {
    Prices.Row row = prices.row(stage, t);
    long all = (1L << (model.longestStretch + 1)) - 1;
    for (int l = 0; l < stage.lengths.length; l++) {
      int length = stage.lengths[l];
      int end = t + length;
      if (end > latest[stage.number] || cells + length > stage.maxCells) {
        return;
      }
      long moved = bits << length & all;
      if (moved != 0 && !row.none(l)) {
        stretches[node(end, stage.number, meals, count, cells + length)] |= moved;
      }
    }
  }

  private void pauses(Stage stage, int meals, int count, int cells, int t) {
    int p = stage.number;
    if (model.breakCells > 0 && model.free(t, t + model.breakCells)) {
      stretches[node(t + model.breakCells, p, meals, count, cells)] |= 1;
    }
    if (model.mealMayStart(meals, t)) {
      stretches[node(t + model.mealCells[meals], p, meals + 1, count, cells)] |= 1;
    }
  }

  private void number() {
    int node = 0;
    for (int t = 0; t <= model.cells; t++) {
      for (Stage stage : model.stages) {
        int end = node + mealSize[stage.number] * (model.mealFrom.length + 1);
        for (; node < end; node++) {
          first[node] = (int) Math.min(Integer.MAX_VALUE, values);
          values += (long) Long.bitCount(stretches[node]) * stage.masks();
        }
      }
    }
  }
}
