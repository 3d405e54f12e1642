package org.arcwright.compose.search;

/** Spreads from the start over all states of a relaxation that can be reached, time by time. */
final class Spread {
  private final Nodes nodes;
  private final Model model;
  private final Stage[] stages;
  private final Prices prices;
  private final Work work;
  private final long[] stretches;
  private final int[] latest;

  Spread(Nodes nodes, Stage[] stages, Prices prices, Work work) {
    this.nodes = nodes;
    this.model = nodes.model;
    this.stages = stages;
    this.prices = prices;
    this.work = work;
    this.stretches = new long[nodes.size()];
    this.latest = latest(model);
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

  /** The stretches that can stand at each node, as bits. */
  long[] run() {
    int phases = model.stages.length;
    int mealCount = model.mealFrom.length;
    stretches[nodes.node(0, 0, 0, 0, 0)] = 1;
    for (int t = 0; t <= model.cells; t++) {
      for (int p = 0; p < phases; p++) {
        for (int j = 0; j <= mealCount; j++) {
          long leaving = spread(stages[p], j, t);
          if (leaving != 0 && p + 1 < phases) {
            stretches[nodes.node(t, p + 1, j, 0, 0)] |= leaving;
          }
        }
      }
      work.add(nodes.width() / 8);
    }
    return stretches;
  }

  /** Goes on from all nodes of a phase at a time; returns the stretches with which it may end. */
  private long spread(Stage stage, int meals, int t) {
    int p = stage.number;
    int node = nodes.node(t, p, meals, 0, 0);
    if (stretches[node] != 0) {
      exercises(stage, meals, nodes.next(stage, 0), 0, t, stretches[node]);
    }
    long leaving = 0;
    for (int c = 1; c <= nodes.counts(p); c++) {
      int next = nodes.next(stage, c);
      for (int m = 0; m < nodes.cellSize(p); m++) {
        long bits = stretches[++node];
        if (bits == 0) {
          continue;
        }
        leaving |= nodes.complete(stage, c, m) ? bits : 0;
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
    Prices.Row row = prices.row(model.stages[stage.number], t);
    long all = (1L << (model.longestStretch + 1)) - 1;
    for (int l = 0; l < stage.lengths.length; l++) {
      int length = stage.lengths[l];
      int end = t + length;
      if (end > latest[stage.number] || cells + length > stage.maxCells) {
        return;
      }
      long moved = bits << length & all;
      if (moved != 0 && !row.none(l)) {
        stretches[nodes.node(end, stage.number, meals, count, cells + length)] |= moved;
      }
    }
  }

  private void pauses(Stage stage, int meals, int count, int cells, int t) {
    int p = stage.number;
    if (model.breakCells > 0 && model.free(t, t + model.breakCells)) {
      stretches[nodes.node(t + model.breakCells, p, meals, count, cells)] |= 1;
    }
    if (model.mealMayStart(meals, t)) {
      stretches[nodes.node(t + model.mealCells[meals], p, meals + 1, count, cells)] |= 1;
    }
  }
}
