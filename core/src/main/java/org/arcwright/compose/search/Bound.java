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
 * <p>Time is states times moves, space 17 octets a value.
 */
final class Bound {
  private static final byte NO_FORMAT = -1;

  final Reach reach;
  private final Model model;
  private final Prices prices;
  private final Work work;
  private final long[] base;
  private final long[] special;
  private final byte[] format;
  private final Entries entries;

  /** The function under construction, one for each bound mask. */
  private final long[] best = new long[16];

  private final long[] second = new long[16];
  private final byte[] bestFormat = new byte[16];

  private final long[] endWhole;
  private final long[] endBroken;
  private long root;

  private Bound(Reach reach, Prices prices, Work work) {
    this.reach = reach;
    this.model = reach.model;
    this.prices = prices;
    this.work = work;
    this.base = new long[reach.values()];
    this.special = new long[reach.values()];
    this.format = new byte[reach.values()];
    this.entries = new Entries(model);
    this.endWhole = ends(false);
    this.endBroken = ends(true);
  }

  static Bound of(Model model, Prices prices, Work work) {
    Bound bound = new Bound(Reach.of(model, prices, work), prices, work);
    bound.backward();
    return bound;
  }

  /** Least price of a whole agenda; {@link Model#INFINITE} or more if nothing fits. */
  long root() {
    return root;
  }

  /**
   * Least price to finish from a label's state, less the toll of each break that led there; {@link
   * Model#INFINITE} or more if impossible.
   */
  long at(int time, int phase, int meals, int count, int cells, int stretch, int last, int mask) {
    int node = reach.node(time, phase, meals, count, cells);
    long bits = reach.stretches[node];
    if ((bits >> stretch & 1) == 0) {
      return Model.INFINITE;
    }
    int rank = Long.bitCount(bits & ((1L << stretch) - 1));
    int value = reach.first[node] + rank * model.stages[phase].masks() + mask;
    return format[value] == last ? special[value] : base[value];
  }

  private void backward() {
    int phases = model.stages.length;
    int meals = model.mealFrom.length;
    for (int t = model.cells; t >= 1; t--) {
      entries.clear();
      for (int p = phases - 1; p >= 0; p--) {
        for (int j = 0; j <= meals; j++) {
          sweep(model.stages[p], j, t);
        }
      }
    }
    entries.clear();
    int entry = entry(model.stages[0], 0, 0, 0, 0);
    root = entries.base[entry];
  }

  private void sweep(Stage stage, int meals, int t) {
    int p = stage.number;
    for (int c = 1; c < reach.countSize(p); c++) {
      int node = reach.node(t, p, meals, c, 0);
      for (int m = 0; m < reach.cellSize(p); m++, node++) {
        if (reach.stretches[node] != 0) {
          settle(stage, meals, t, c, m, node);
        }
      }
    }
  }

  private void settle(Stage stage, int meals, int t, int count, int cells, int node) {
    int masks = stage.masks();
    int value = reach.first[node];
    boolean complete = reach.complete(stage, count, cells);
    int next = reach.next(stage, count);
    long share = reach.exact ? model.pack(stage.shareCost[cells]) : 0;
    for (long rest = reach.stretches[node]; rest != 0; rest &= rest - 1) {
      int s = Long.numberOfTrailingZeros(rest);
      clear(masks);
      if (next >= 0) {
        exercises(stage, meals, t, next, cells, s);
      }
      long monotony = s == 0 ? model.monotonyAcrossBreak : model.monotony;
      for (int y = 0; y < masks; y++) {
        base[value + y] = best[y];
        format[value + y] = bestFormat[y];
        special[value + y] = Math.min(best[y] + monotony, second[y]);
      }
      for (int y = 0; y < masks; y++, value++) {
        if (complete && (y & stage.awaitedDue) == stage.awaitedDue) {
          leave(stage, meals, t, s, y, share, value);
        }
        if (s > 0 && model.pinAt[t] < 0) {
          pauses(stage, meals, t, count, cells, s, y, value);
        }
      }
      work.add(masks);
    }
  }

  private void clear(int masks) {
    Arrays.fill(best, 0, masks, Model.INFINITE);
    Arrays.fill(second, 0, masks, Model.INFINITE);
    Arrays.fill(bestFormat, 0, masks, NO_FORMAT);
  }

  /** Takes every exercise of a phase from a state into the function under construction. */
  private void exercises(Stage stage, int meals, int t, int count, int cells, int s) {
    long[] price = prices.at(stage, t);
    int done = -1;
    int target = -1;
    for (int k = 0; k < price.length; k++) {
      if (price[k] >= Model.INFINITE) {
        continue;
      }
      int length = stage.moveLength[k];
      if (length != done) {
        if (s + length > model.longestStretch
            || t + length > model.cells
            || cells + length > stage.maxCells) {
          return;
        }
        done = length;
        target = state(t + length, stage, meals, count, cells + length, s + length);
      }
      if (target >= 0) {
        take(stage, k, target, price[k]);
      }
    }
  }

  private void take(Stage stage, int move, int target, long price) {
    int gain = stage.moveGain[move];
    int need = stage.moveNeed[move];
    byte next = (byte) stage.moveFormat[move];
    int masks = stage.masks();
    for (int y = 0; y < masks; y++) {
      if ((need & ~y) != 0) {
        continue;
      }
      int value = target + (y | gain);
      long total = price + (format[value] == next ? special[value] : base[value]);
      if (total < best[y]) {
        if (bestFormat[y] != next) {
          second[y] = best[y];
          bestFormat[y] = next;
        }
        best[y] = total;
      } else if (total < second[y] && bestFormat[y] != next) {
        second[y] = total;
      }
    }
  }

  /** Number of a state's first value, or -1 if it cannot be reached. */
  private int state(int t, Stage stage, int meals, int count, int cells, int s) {
    int node = reach.node(t, stage.number, meals, count, cells);
    long bits = reach.stretches[node];
    if ((bits >> s & 1) == 0) {
      return -1;
    }
    return reach.first[node] + Long.bitCount(bits & ((1L << s) - 1)) * stage.masks();
  }

  /** Ends the phase: with the next one's first exercise, or with the agenda. */
  private void leave(Stage stage, int meals, int t, int s, int y, long share, int value) {
    int p = stage.number;
    if (p + 1 < model.stages.length) {
      Stage next = model.stages[p + 1];
      int entry = entry(next, meals, t, s, next.carried[y]);
      merge(value, share, entries.base[entry], entries.special[entry], entries.format[entry]);
    } else if (s > 0 && meals == model.mealFrom.length) {
      long end = s < t ? endBroken[t] + model.rhythm(s) : endWhole[t];
      merge(value, share + end, 0, 0, NO_FORMAT);
    }
  }

  /**
   * Least price of ending at each time, the last stretch apart: how many breaks there were is not
   * known, so the cheapest number that fits is assumed, and charged the toll.
   */
  private long[] ends(boolean broken) {
    long[] ends = new long[model.cells + 1];
    Arrays.fill(ends, Model.INFINITE);
    int shortest = model.cells;
    for (Stage stage : model.stages) {
      shortest = Math.min(shortest, stage.moveLength[0]);
    }
    int meals = model.mealCells.length;
    int rested = Arrays.stream(model.mealCells).sum();
    int most = broken && model.breakCells > 0 ? model.cells / (model.breakCells + shortest) : 0;
    for (int t = model.lastPin + 1; t <= model.cells; t++) {
      for (int breaks = broken && meals == 0 ? 1 : 0; breaks <= most; breaks++) {
        int exercise = t - rested - breaks * model.breakCells;
        int stretches = breaks + meals + 1;
        int end = t + model.buffer(Math.max(0, exercise));
        if (exercise >= stretches * shortest
            && exercise <= stretches * model.longestStretch
            && end <= model.cells) {
          ends[t] = Math.min(ends[t], model.idle(model.cells - end) + breaks * model.toll);
        }
      }
    }
    return ends;
  }

  private void pauses(
      Stage stage, int meals, int t, int count, int cells, int s, int y, int value) {
    int pause = model.breakCells;
    if (pause > 0 && model.free(t, t + pause)) {
      long price = model.pause - model.toll + model.rhythm(s) + model.breakTie(t, pause);
      rest(state(t + pause, stage, meals, count, cells, 0), y, price, value);
    }
    if (meals < model.mealFrom.length
        && model.mealFrom[meals] <= t
        && t <= model.mealTo[meals]
        && model.free(t, t + model.mealCells[meals])) {
      int meal = model.mealCells[meals];
      long price = model.breakTie(t, meal);
      rest(state(t + meal, stage, meals + 1, count, cells, 0), y, price, value);
    }
  }

  private void rest(int target, int y, long price, int value) {
    if (target >= 0) {
      int after = target + y;
      merge(value, price, base[after], special[after], format[after]);
    }
  }

  /** Makes a value the minimum of itself and another function, the price added. */
  private void merge(int value, long price, long otherBase, long otherSpecial, byte otherFormat) {
    long b = otherBase + price;
    long c = otherFormat == NO_FORMAT ? b : otherSpecial + price;
    if (b < base[value]) {
      long mine = format[value] == otherFormat ? special[value] : base[value];
      base[value] = b;
      format[value] = otherFormat;
      special[value] = Math.min(c, mine);
    } else {
      long other = format[value] == otherFormat ? c : b;
      special[value] = Math.min(special[value], other);
    }
  }

  /** The function of starting a phase at a time, kept for all states that share it. */
  private int entry(Stage stage, int meals, int t, int s, int mask) {
    int entry = entries.index(stage.number, meals, s, mask);
    if (entries.fresh(entry)) {
      int masks = stage.masks();
      clear(masks);
      exercises(stage, meals, t, reach.next(stage, 0), 0, s);
      long monotony = s == 0 ? model.monotonyAcrossBreak : model.monotony;
      for (int y = 0; y < masks; y++) {
        int sibling = entries.index(stage.number, meals, s, y);
        entries.keep(sibling, best[y], Math.min(best[y] + monotony, second[y]), bestFormat[y]);
      }
    }
    return entry;
  }

  /** The functions of starting each phase, at the time the pass has reached. */
  private static final class Entries {
    final long[] base;
    final long[] special;
    final byte[] format;
    private final int[] stamp;
    private final int stretches;
    private final int meals;
    private int now;

    Entries(Model model) {
      stretches = model.longestStretch + 1;
      meals = model.mealFrom.length + 1;
      int size = model.stages.length * meals * stretches * 16;
      base = new long[size];
      special = new long[size];
      format = new byte[size];
      stamp = new int[size];
    }

    void clear() {
      now++;
    }

    int index(int phase, int mealsHad, int stretch, int mask) {
      return ((phase * meals + mealsHad) * stretches + stretch) * 16 + mask;
    }

    boolean fresh(int entry) {
      return stamp[entry] != now;
    }

    void keep(int entry, long baseValue, long specialValue, byte specialFormat) {
      stamp[entry] = now;
      base[entry] = baseValue;
      special[entry] = specialValue;
      format[entry] = specialFormat;
    }
  }
}
