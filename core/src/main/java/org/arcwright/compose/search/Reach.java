package org.arcwright.compose.search;

/**
 * Which states of the relaxation can be reached from the start. A node is a time, a phase, the
 * meals had, and the exercises and cells spent on the phase; the stretches that can stand there are
 * the bits of one long. States are numbered only where they exist, so that the bound's tables stay
 * small: time and space are linear in the nodes times the lengths.
 */
final class Reach {
  /** Most nodes, and most values, that a table may have; beyond them the bound is coarser. */
  private static final long MOST = 24_000_000;

  final Model model;

  /** Whether nodes tell counts and minutes apart; a coarse bound follows neither. */
  final boolean exact;

  /** Stretches that can stand at each node. */
  final long[] stretches;

  /** Number of the node's first value; the values of a node's states follow each other. */
  final int[] first;

  /** Nodes at one time. */
  final int width;

  private final int[] phaseOffset;
  private final int[] countSize;
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
    this.countSize = new int[phases];
    this.cellSize = new int[phases];
    int offset = 0;
    for (int p = 0; p < phases; p++) {
      Stage stage = model.stages[p];
      phaseOffset[p] = offset;
      countSize[p] = counts(stage, exact);
      cellSize[p] = exact ? stage.maxCells + 1 : 1;
      offset += countSize[p] * cellSize[p] * (model.mealFrom.length + 1);
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

  private static int counts(Stage stage, boolean exact) {
    return (exact && stage.counted ? stage.most : Math.min(stage.fewest, stage.maxCells + 1)) + 1;
  }

  private static long nodes(Model model) {
    long sum = 0;
    for (Stage stage : model.stages) {
      sum += (long) counts(stage, true) * (stage.maxCells + 1);
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

  /** The node's number; count and cells as the bound follows them. */
  int node(int time, int phase, int meals, int count, int cells) {
    int c = exact ? count : Math.min(count, countSize[phase] - 1);
    int m = exact ? cells : 0;
    return time * width + phaseOffset[phase] + (meals * countSize[phase] + c) * cellSize[phase] + m;
  }

  int countSize(int phase) {
    return countSize[phase];
  }

  int cellSize(int phase) {
    return cellSize[phase];
  }

  /** Whether a phase may end at a node, as far as the bound can tell. */
  boolean complete(Stage stage, int count, int cells) {
    return exact
        ? stage.complete(count, cells)
        : count >= Math.min(stage.fewest, countSize[stage.number] - 1);
  }

  private int countAfter(Stage stage, int count) {
    return exact ? stage.countAfter(count) : Math.min(count + 1, countSize[stage.number] - 1);
  }

  /** The count after one more exercise, as the bound follows it; -1 if there may be none. */
  int next(Stage stage, int count) {
    return exact && !stage.allowsAfter(count) ? -1 : countAfter(stage, count);
  }

  private Reach forward() {
    int phases = model.stages.length;
    int mealCount = model.mealFrom.length;
    enter(model.stages[0], 0, 0, 1L);
    for (int t = 1; t <= model.cells; t++) {
      for (int p = 0; p < phases; p++) {
        for (int j = 0; j <= mealCount; j++) {
          long leaving = spread(model.stages[p], j, t);
          if (leaving != 0 && p + 1 < phases) {
            enter(model.stages[p + 1], j, t, leaving);
          }
        }
      }
      work.add(width);
    }
    number();
    return this;
  }

  /** Goes on from all nodes of a phase at a time; returns the stretches with which it may end. */
  private long spread(Stage stage, int meals, int t) {
    int p = stage.number;
    long leaving = 0;
    for (int c = 1; c < countSize[p]; c++) {
      int node = node(t, p, meals, c, 0);
      for (int m = 0; m < cellSize[p]; m++, node++) {
        long bits = stretches[node];
        if (bits == 0) {
          continue;
        }
        leaving |= complete(stage, c, m) ? bits : 0;
        int next = next(stage, c);
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

  private void enter(Stage stage, int meals, int t, long bits) {
    exercises(stage, meals, countAfter(stage, 0), 0, t, bits);
  }

  private void exercises(Stage stage, int meals, int count, int cells, int t, long bits) {
    long[] price = prices.at(stage, t);
    long all = (1L << (model.longestStretch + 1)) - 1;
    int done = 0;
    for (int k = 0; k < price.length; k++) {
      int length = stage.moveLength[k];
      if (price[k] >= Model.INFINITE || length == done) {
        continue;
      }
      done = length;
      int end = t + length;
      if (end > latest[stage.number] || cells + length > stage.maxCells) {
        break;
      }
      long moved = bits << length & all;
      if (moved != 0) {
        stretches[node(end, stage.number, meals, count, cells + length)] |= moved;
      }
    }
  }

  private void pauses(Stage stage, int meals, int count, int cells, int t) {
    int p = stage.number;
    if (model.breakCells > 0 && model.free(t, t + model.breakCells)) {
      stretches[node(t + model.breakCells, p, meals, count, cells)] |= 1;
    }
    if (meals < model.mealFrom.length
        && model.mealFrom[meals] <= t
        && t <= model.mealTo[meals]
        && model.free(t, t + model.mealCells[meals])) {
      stretches[node(t + model.mealCells[meals], p, meals + 1, count, cells)] |= 1;
    }
  }

  private void number() {
    int node = 0;
    for (int t = 0; t <= model.cells; t++) {
      for (Stage stage : model.stages) {
        int p = stage.number;
        int end = node + countSize[p] * cellSize[p] * (model.mealFrom.length + 1);
        for (; node < end; node++) {
          first[node] = (int) Math.min(Integer.MAX_VALUE, values);
          values += (long) Long.bitCount(stretches[node]) * stage.masks();
        }
      }
    }
  }
}
