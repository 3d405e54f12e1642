package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From where a day can still be ended, if exercises could come twice: worked out backward over time
 * (a relaxation of the state space, Christofides, Mingozzi and Toth 1981). The stretches from which
 * it can are the bits of a word, so that a step moves all of them at once.
 */
final class Finishable {
  /** More words are not worth their memory; eight bytes each. */
  private static final long MOST_WORDS = 3_000_000;

  /** A bit above those of all stretches: the word has been worked out. */
  private static final long KNOWN = 1L << 63;

  /** Most products of a phase that are followed. */
  private static final int FOLLOWED = 3;

  private final Model model;

  /** For each phase, what may exist by its end. */
  private final long[] possible;

  private final int mealCount;
  private final Part[] parts;

  /** Least cells of exercises in a phase and all after it. */
  private final int[] least;

  /** Peers as this sees them. */
  private record Move(int cells, int gain, int pinned) {}

  /** A phase, its words, and how they are found. */
  private static final class Part {
    final Stage stage;
    final long[] followed;
    final int counts;
    final int cells;
    final List<Move> moves;
    long[] words = {};

    Part(Stage stage, int day, int most) {
      this.stage = stage;
      this.followed = followed(stage.due, most);
      this.counts = (stage.counted ? stage.most : stage.fewest) + 1;
      this.cells = (stage.maxCells < day ? stage.maxCells : stage.minCells) + 1;
      Set<Move> found = new LinkedHashSet<>();
      for (Peers[] move : stage.movePeers) {
        for (Peers peers : move) {
          int pinned = peers.pinned ? peers.members[0] : -1;
          found.add(new Move(peers.length, mask(peers.yields), pinned));
        }
      }
      this.moves = new ArrayList<>(found);
    }

    private static long[] followed(long due, int most) {
      long[] bits = new long[Math.min(most, Long.bitCount(due))];
      long rest = due;
      for (int i = 0; i < bits.length; i++) {
        bits[i] = Long.lowestOneBit(rest);
        rest &= rest - 1;
      }
      return bits;
    }

    int mask(long products) {
      int mask = 0;
      for (int i = 0; i < followed.length; i++) {
        mask |= (products & followed[i]) != 0 ? 1 << i : 0;
      }
      return mask;
    }

    /** States of one time and so many meals. */
    int states() {
      return (counts * cells) << followed.length;
    }

    int state(int count, int cellsHad, int mask) {
      return (count * cells + cellsHad) << followed.length | mask;
    }

    boolean complete(int count, int cellsHad, int mask) {
      return count >= stage.fewest
          && cellsHad >= stage.minCells
          && mask == (1 << followed.length) - 1;
    }
  }

  private Finishable(Model model, long[] possible, Part[] parts) {
    this.model = model;
    this.possible = possible;
    this.mealCount = model.mealFrom.length;
    this.parts = parts;
    this.least = new int[parts.length + 1];
    for (int p = parts.length - 1; p >= 0; p--) {
      Stage stage = parts[p].stage;
      least[p] = least[p + 1] + Math.max(stage.minCells, stage.fewest * stage.moveLength[0]);
      parts[p].words = new long[(model.cells + 1) * (mealCount + 1) * parts[p].states()];
    }
  }

  /** It, or nothing if there is too much to look at. */
  static Optional<Finishable> of(Model model, long[] possible) {
    for (int followed = FOLLOWED; followed >= 0; followed--) {
      Part[] parts = new Part[model.stages.length];
      long words = 0;
      for (int p = 0; p < parts.length; p++) {
        parts[p] = new Part(model.stages[p], model.cells, followed);
        words += (model.cells + 1L) * (model.mealFrom.length + 1) * parts[p].states();
      }
      if (words <= MOST_WORDS) {
        return Optional.of(new Finishable(model, possible, parts));
      }
    }
    return Optional.empty();
  }

  /** Whether the day can still be ended from there. */
  boolean open(
      int stage,
      int count,
      int cells,
      int time,
      int stretch,
      int meals,
      int rested,
      long products) {
    Part part = parts[stage];
    int counted = Math.min(count, part.counts - 1);
    int timed = Math.min(cells, part.cells - 1);
    long word = word(stage, time, meals, counted, timed, part.mask(products));
    return (word >> stretch & 1) != 0
        && inTime(part.stage, stage, count, cells, time, stretch, meals, rested);
  }

  /** Whether buffer and all, at the least, end within the day. */
  private boolean inTime(
      Stage stage, int number, int count, int cells, int time, int stretch, int meals, int rested) {
    int work =
        least[number + 1]
            + Math.max(
                Math.max(0, stage.minCells - cells), (stage.fewest - count) * stage.moveLength[0]);
    int rests = Math.max(0, (stretch + work + model.longestStretch - 1) / model.longestStretch - 1);
    int end = time + work + Math.max(0, rests - (mealCount - meals)) * model.breakCells;
    for (int meal = meals; meal < mealCount; meal++) {
      end += model.mealCells[meal];
    }
    return end + model.buffer(time - rested + work) <= model.cells;
  }

  /** The stretches from which the day can be ended there, as bits; worked out when first asked. */
  private long word(int p, int time, int meals, int count, int cells, int mask) {
    Part part = parts[p];
    int at = (time * (mealCount + 1) + meals) * part.states() + part.state(count, cells, mask);
    if ((part.words[at] & KNOWN) == 0) {
      part.words[at] = KNOWN | workedOut(p, time, meals, count, cells, mask);
    }
    return part.words[at] & ~KNOWN;
  }

  private long workedOut(int p, int time, int meals, int count, int cells, int mask) {
    long working = (2L << model.longestStretch) - 2;
    boolean complete = parts[p].complete(count, cells, mask);
    boolean last = p == parts.length - 1;
    boolean over = last && complete && time > model.lastPin && meals == mealCount;
    long word = over ? working : 0;
    if (complete && !last) {
      word |= exercises(p + 1, 0, 0, parts[p + 1].mask(possible[p]), time, meals);
    }
    word |= exercises(p, count, cells, mask, time, meals);
    if ((word & working) != working && rests(p, count, cells, mask, time, meals)) {
      word |= working;
    }
    return word;
  }

  private boolean rests(int p, int count, int cells, int mask, int time, int meals) {
    if (model.pinAt[time] >= 0) {
      return false;
    }
    if (model.breakCells > 0
        && model.free(time, time + model.breakCells)
        && (word(p, time + model.breakCells, meals, count, cells, mask) & 1) != 0) {
      return true;
    }
    return model.mealMayStart(meals, time)
        && (word(p, time + model.mealCells[meals], meals + 1, count, cells, mask) & 1) != 0;
  }

  private long exercises(int p, int count, int cells, int mask, int time, int meals) {
    Part part = parts[p];
    if (part.stage.counted && count == part.stage.most) {
      return 0;
    }
    long word = 0;
    for (Move move : part.moves) {
      int end = time + move.cells();
      if (move.pinned() == model.pinAt[time]
          && model.free(time, end)
          && cells + move.cells() <= part.stage.maxCells) {
        int after = Math.min(count + 1, part.counts - 1);
        int cellsAfter = Math.min(cells + move.cells(), part.cells - 1);
        word |= word(p, end, meals, after, cellsAfter, mask | move.gain()) >>> move.cells();
      }
    }
    return word;
  }
}
