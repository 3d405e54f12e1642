package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The states through which an agenda under a ceiling may lead: one forward pass over those of an
 * outline, which leaves out each state whose least price from the start and least price to finish
 * reach the ceiling together. What is left is mostly a small part, so that a finer bound is cheap.
 */
final class Corridor {
  private final Reach reach;
  private final Nodes nodes;
  private final Model model;
  private final Prices prices;
  private final Bound after;
  private final long ceiling;
  private final Work work;
  private final long[] before;
  private final long[] kept;

  private Corridor(Reach reach, Prices prices, Bound after, long ceiling, Work work) {
    this.reach = reach;
    this.nodes = reach.nodes;
    this.model = nodes.model;
    this.prices = prices;
    this.after = after;
    this.ceiling = ceiling;
    this.work = work;
    this.before = new long[(int) reach.values];
    this.kept = new long[nodes.size()];
    Arrays.fill(before, Model.INFINITE);
  }

  /**
   * The stretches at each node, as bits, through which an agenda under the ceiling may lead.
   *
   * @param after the outline's price to finish
   */
  static long[] of(Reach reach, Prices prices, Bound after, long ceiling, Work work) {
    Corridor corridor = new Corridor(reach, prices, after, ceiling, work);
    corridor.forward();
    return corridor.kept;
  }

  private void forward() {
    offer(0, reach.stages[0], 0, 0);
    for (int t = 0; t <= model.cells; t++) {
      for (Stage stage : reach.stages) {
        for (int j = 0; j <= model.mealFrom.length; j++) {
          sweep(stage, j, t);
        }
      }
    }
  }

  /** Takes a price to reach a state, if an agenda under the ceiling may lead on from there. */
  private void offer(int node, Stage stage, int stretch, long price) {
    if (reach.has(node, stretch) && price + after.after(node, stretch, stage) < ceiling) {
      int value = reach.value(node, stretch, stage);
      before[value] = Math.min(before[value], price);
      kept[node] |= 1L << stretch;
    }
  }

  private void sweep(Stage stage, int meals, int t) {
    int p = stage.number;
    int node = nodes.node(t, p, meals, 0, 0);
    if (kept[node] != 0) {
      exercises(stage, meals, t, nodes.next(stage, 0), 0, node);
    }
    for (int c = 1; c <= nodes.counts(p); c++) {
      int next = nodes.next(stage, c);
      for (int m = 0; m < nodes.cellSize(p); m++) {
        if (kept[++node] != 0) {
          if (next >= 0) {
            exercises(stage, meals, t, next, m, node);
          }
          if (nodes.complete(stage, c, m) && p + 1 < reach.stages.length) {
            leave(stage, meals, t, m, node);
          }
          if (model.pinAt[t] < 0) {
            pauses(stage, meals, t, c, m, node);
          }
        }
      }
    }
  }

  private void exercises(Stage stage, int meals, int t, int count, int cells, int node) {
    Prices.Row row = prices.row(model.stages[stage.number], t);
    work.add(Long.bitCount(kept[node]));
    for (int l = 0; l < stage.lengths.length; l++) {
      int length = stage.lengths[l];
      if (t + length > model.cells || cells + length > stage.maxCells) {
        return;
      }
      if (!row.none(l)) {
        long least = row.price[row.from(l)];
        int next = nodes.node(t + length, stage.number, meals, count, cells + length);
        for (long rest = kept[node] & reach.stretches[next] >> length;
            rest != 0;
            rest &= rest - 1) {
          int s = Long.numberOfTrailingZeros(rest);
          offer(next, stage, s + length, price(node, s, stage) + least);
        }
      }
    }
  }

  private void leave(Stage stage, int meals, int t, int cells, int node) {
    Stage then = reach.stages[stage.number + 1];
    long share = nodes.exact ? model.pack(stage.shareCost[cells]) : 0;
    int next = nodes.node(t, then.number, meals, 0, 0);
    for (long rest = kept[node]; rest != 0; rest &= rest - 1) {
      int s = Long.numberOfTrailingZeros(rest);
      offer(next, then, s, price(node, s, stage) + share);
    }
  }

  private void pauses(Stage stage, int meals, int t, int count, int cells, int node) {
    int pause = model.breakCells;
    for (long rest = kept[node] & ~1L; rest != 0; rest &= rest - 1) {
      int s = Long.numberOfTrailingZeros(rest);
      long price = price(node, s, stage);
      if (pause > 0 && model.free(t, t + pause)) {
        int next = nodes.node(t + pause, stage.number, meals, count, cells);
        long more = model.pause - model.toll + model.breakTie(t, pause) + model.rhythm(s);
        offer(next, stage, 0, price + more);
      }
      if (model.mealMayStart(meals, t)) {
        int meal = model.mealCells[meals];
        int next = nodes.node(t + meal, stage.number, meals + 1, count, cells);
        offer(next, stage, 0, price + model.breakTie(t, meal));
      }
    }
  }

  private long price(int node, int stretch, Stage stage) {
    return before[reach.value(node, stretch, stage)];
  }
}
