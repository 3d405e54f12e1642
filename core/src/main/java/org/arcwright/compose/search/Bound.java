package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The least price at which an agenda can be finished from each state, when an exercise may be used
 * again: the completion bound of the label setting (Righini and Salani 2008 call such a relaxation
 * state-space relaxation). One backward pass over the states of {@link Reach}.
 *
 * <p>The price to finish depends on the last format only by the price of monotony, so that over all
 * last formats it is one value but for a single format: a state keeps that value ({@code base}),
 * the exception's format and its value ({@code special}). Functions of this shape are closed under
 * minimum, sum with a constant, and the moves.
 *
 * <p>Time is states times moves, space 18 octets a value.
 */
final class Bound {
  private static final char NO_FORMAT = Character.MAX_VALUE;

  private final Reach reach;
  private final Nodes nodes;
  private final Model model;
  private final Stage[] stages;
  private final Prices prices;
  private final boolean formats;
  private final long monotony;
  private final long monotonyAcrossBreak;
  private final Work work;
  private final long[] base;
  private final long[] special;
  private final char[] format;
  private final long[] endWhole;
  private final long[] endBroken;

  private Bound(Reach reach, Prices prices, boolean formats, Work work) {
    this.reach = reach;
    this.nodes = reach.nodes;
    this.model = nodes.model;
    this.stages = reach.stages;
    this.prices = prices;
    this.work = work;
    this.formats = formats;
    this.monotony = formats ? model.monotony : 0;
    this.monotonyAcrossBreak = formats ? model.monotonyAcrossBreak : 0;
    this.base = new long[(int) reach.values];
    this.special = new long[base.length];
    this.format = new char[base.length];
    this.endWhole = Ends.of(model, false);
    this.endBroken = Ends.of(model, true);
  }

  /** The bound for all states of a reach. */
  static Bound of(Reach reach, Prices prices, Work work) {
    Bound bound = new Bound(reach, prices, true, work);
    bound.backward();
    return bound;
  }

  /** The bound that takes any formats to differ. */
  static Bound withoutFormats(Reach reach, Prices prices, Work work) {
    Bound bound = new Bound(reach, prices, false, work);
    bound.backward();
    return bound;
  }

  /** Least price of a whole agenda; {@link Model#INFINITE} or more if nothing fits. */
  long root() {
    return base.length == 0 ? Model.INFINITE : base[0];
  }

  /** Least price to finish from a state that is reached, whatever its last format is. */
  long after(int node, int stretch, Stage stage) {
    return base[reach.value(node, stretch, stage) + stage.masks() - 1];
  }

  /** Number of a label's state, its format and products apart; -1 if it is not reached. */
  int state(int time, int phase, int meals, int count, int cells, int stretch) {
    int node = nodes.node(time, phase, meals, count, cells);
    return reach.has(node, stretch) ? reach.value(node, stretch, stages[phase]) : -1;
  }

  /**
   * Least price to finish from a state with that last format and bound mask, less the toll of each
   * break that led there; {@link Model#INFINITE} or more if impossible.
   */
  long at(int state, int phase, int last, int mask) {
    int value = state + (mask & (stages[phase].masks() - 1));
    return format[value] == last ? special[value] : base[value];
  }

  private void backward() {
    Arrays.fill(base, Model.INFINITE);
    Arrays.fill(special, Model.INFINITE);
    Arrays.fill(format, NO_FORMAT);
    for (int t = model.cells; t >= 0; t--) {
      for (int p = stages.length - 1; p >= 0; p--) {
        for (int j = 0; j <= model.mealFrom.length; j++) {
          sweep(stages[p], j, t);
        }
      }
    }
  }

  private void sweep(Stage stage, int meals, int t) {
    int p = stage.number;
    int node = nodes.node(t, p, meals, 0, 0);
    if (reach.stretches[node] != 0) {
      exercises(stage, meals, t, nodes.next(stage, 0), 0, node);
    }
    for (int c = 1; c <= nodes.counts(p); c++) {
      int next = nodes.next(stage, c);
      for (int m = 0; m < nodes.cellSize(p); m++) {
        if (reach.stretches[++node] != 0) {
          if (next >= 0) {
            exercises(stage, meals, t, next, m, node);
          }
          if (nodes.complete(stage, c, m)) {
            leave(stage, meals, t, m, node);
          }
          if (model.pinAt[t] < 0) {
            pauses(stage, meals, t, c, m, node);
          }
        }
      }
    }
  }

  /** Takes every exercise of a phase into the values of a node. */
  private void exercises(Stage stage, int meals, int t, int count, int cells, int node) {
    Prices.Row row = prices.row(model.stages[stage.number], t);
    int masks = stage.masks();
    long bits = reach.stretches[node];
    int value = reach.first[node];
    work.add((long) Long.bitCount(bits) * masks);
    for (int l = 0; l < stage.lengths.length; l++) {
      int length = stage.lengths[l];
      if (t + length > model.cells || cells + length > stage.maxCells) {
        return;
      }
      if (row.none(l)) {
        continue;
      }
      int next = nodes.node(t + length, stage.number, meals, count, cells + length);
      long there = reach.stretches[next];
      if (!formats) {
        takeOne(row.price[row.from(l)], bits, there, length, value, reach.first[next]);
        continue;
      }
      for (long rest = bits & there >> length; rest != 0; rest &= rest - 1) {
        int s = Long.numberOfTrailingZeros(rest);
        take(
            row,
            l,
            s == 0 ? monotonyAcrossBreak : monotony,
            masks,
            value + Reach.rank(bits, s) * masks,
            reach.first[next] + Reach.rank(there, s + length) * masks);
      }
    }
  }

  /** Takes a length's only move into the values of a node's states, when nothing else matters. */
  private void takeOne(long price, long bits, long there, int length, int value, int target) {
    for (long rest = bits & there >> length; rest != 0; rest &= rest - 1) {
      int s = Long.numberOfTrailingZeros(rest);
      int from = value + Reach.rank(bits, s);
      base[from] = Math.min(base[from], price + base[target + Reach.rank(there, s + length)]);
    }
  }

  /** Takes the moves of one length into the values of a state; they lead to a target's values. */
  private void take(Prices.Row row, int length, long monotony, int masks, int value, int target) {
    int to = row.ends[length];
    int from = row.from(length);
    long floor = base[target + masks - 1];
    for (int y = 0; y < masks; y++) {
      long least = base[value + y];
      long other = special[value + y];
      char exception = format[value + y];
      for (int e = from; e < to; e++) {
        long price = row.price[e];
        if (price + floor >= other) {
          break;
        }
        if ((row.need[e] & ~y) != 0) {
          continue;
        }
        int after = target + (y | row.gain[e]);
        char next = row.format[e];
        long total = price + (format[after] == next ? special[after] : base[after]);
        if (total < least) {
          other = Math.min(exception == next ? other : least, total + monotony);
          least = total;
          exception = next;
        } else if (total < other && exception != next) {
          other = total;
        }
      }
      base[value + y] = least;
      special[value + y] = other;
      format[value + y] = exception;
    }
  }

  /** Ends the phase: with the next one's first exercise, or with the agenda. */
  private void leave(Stage stage, int meals, int t, int cells, int node) {
    int masks = stage.masks();
    boolean last = stage.number + 1 == stages.length;
    if (last && meals < model.mealFrom.length) {
      return;
    }
    long share = nodes.exact ? model.pack(stage.shareCost[cells]) : 0;
    int next = last ? 0 : nodes.node(t, stage.number + 1, meals, 0, 0);
    long there = last ? 0 : reach.stretches[next];
    int value = reach.first[node];
    for (long rest = reach.stretches[node]; rest != 0; rest &= rest - 1, value += masks) {
      int s = Long.numberOfTrailingZeros(rest);
      if (last ? s == 0 : (there >> s & 1) == 0) {
        continue;
      }
      long end = last ? s < t ? endBroken[t] + model.rhythm(s) : endWhole[t] : 0;
      int target =
          last ? 0 : reach.first[next] + Reach.rank(there, s) * stages[stage.number + 1].masks();
      for (int y = 0; y < masks; y++) {
        if ((y & stage.awaitedDue) == stage.awaitedDue) {
          if (last) {
            merge(value + y, share + end, share + end, NO_FORMAT);
          } else {
            int from = target + stages[stage.number + 1].carried[y];
            merge(value + y, base[from] + share, special[from] + share, format[from]);
          }
        }
      }
    }
  }

  private void pauses(Stage stage, int meals, int t, int count, int cells, int node) {
    int pause = model.breakCells;
    if (pause > 0 && model.free(t, t + pause)) {
      int target = nodes.node(t + pause, stage.number, meals, count, cells);
      long price = model.pause - model.toll + model.breakTie(t, pause);
      rest(node, target, stage.masks(), price, true);
    }
    if (model.mealMayStart(meals, t)) {
      int meal = model.mealCells[meals];
      int target = nodes.node(t + meal, stage.number, meals + 1, count, cells);
      rest(node, target, stage.masks(), model.breakTie(t, meal), false);
    }
  }

  /** Rests between a node's states and another's with no stretch yet, the first of them. */
  private void rest(int node, int target, int masks, long price, boolean rhythm) {
    if ((reach.stretches[target] & 1) == 0) {
      return;
    }
    int value = reach.first[node];
    int after = reach.first[target];
    for (long rest = reach.stretches[node]; rest != 0; rest &= rest - 1, value += masks) {
      int s = Long.numberOfTrailingZeros(rest);
      if (s > 0) {
        long whole = rhythm ? price + model.rhythm(s) : price;
        for (int y = 0; y < masks; y++) {
          merge(value + y, base[after + y] + whole, special[after + y] + whole, format[after + y]);
        }
      }
    }
  }

  /** Makes a value the minimum of itself and another function. */
  private void merge(int value, long otherBase, long otherSpecial, char otherFormat) {
    if (otherBase < base[value]) {
      long mine = format[value] == otherFormat ? special[value] : base[value];
      base[value] = otherBase;
      format[value] = otherFormat;
      special[value] = Math.min(otherSpecial, mine);
    } else if (otherBase < special[value]) {
      long other = format[value] == otherFormat ? otherSpecial : otherBase;
      special[value] = Math.min(special[value], other);
    }
  }
}
