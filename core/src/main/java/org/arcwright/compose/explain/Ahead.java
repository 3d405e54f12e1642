package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.explain.Day.Move;
import org.arcwright.compose.explain.Day.Stage;

/**
 * From where a day can still be ended, if exercises could come twice: worked out backward over time
 * (a relaxation of the state space, Christofides, Mingozzi and Toth 1981). The stretches from which
 * it can are the bits of a word, so that a step moves all of them at once.
 */
final class Ahead {
  /** More words are not worth their memory; eight bytes each. */
  private static final long MOST_WORDS = 3_000_000;

  /** A bit above those of all stretches: the word has been worked out. */
  private static final long KNOWN = 1L << 63;

  /** Most products of a phase that are followed. */
  private static final int FOLLOWED = 3;

  private final Day day;
  private final int mealCount;
  private final Part[] parts;

  /** Least cells of exercises in a phase and all after it. */
  private final int[] least;

  /** A move as this sees it. */
  private record Step(int cells, int gain, int pinned) {}

  /** A phase, its words, and how they are found. */
  private static final class Part {
    final Stage stage;
    final long[] followed;
    final int counts;
    final int cells;
    final List<Step> steps;
    long[] words = {};

    Part(Stage stage, int most) {
      this.stage = stage;
      this.followed = followed(stage.due(), most);
      this.counts = (stage.counted() ? stage.most() : stage.fewest()) + 1;
      this.cells = (stage.timed() ? stage.longest() : stage.least()) + 1;
      Set<Step> found = new LinkedHashSet<>();
      for (Move move : stage.moves()) {
        int pinned = move.pinned() ? move.candidates().get(0) : -1;
        found.add(new Step(move.cells(), mask(move.yields()), pinned));
      }
      this.steps = new ArrayList<>(found);
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
      return count >= stage.fewest()
          && cellsHad >= stage.least()
          && mask == (1 << followed.length) - 1;
    }
  }

  private Ahead(Day day, Part[] parts) {
    this.day = day;
    this.mealCount = day.mealFrom.length;
    this.parts = parts;
    this.least = new int[parts.length + 1];
    for (int p = parts.length - 1; p >= 0; p--) {
      Stage stage = parts[p].stage;
      least[p] = least[p + 1] + Math.max(stage.least(), stage.fewest() * stage.shortestMove());
      parts[p].words = new long[(day.cells + 1) * (mealCount + 1) * parts[p].states()];
    }
  }

  /** It, or nothing if there is too much to look at. */
  static Optional<Ahead> of(Day day) {
    for (int followed = FOLLOWED; followed >= 0; followed--) {
      Part[] parts = new Part[day.stages.size()];
      long words = 0;
      for (int p = 0; p < parts.length; p++) {
        parts[p] = new Part(day.stages.get(p), followed);
        words += (day.cells + 1L) * (day.mealFrom.length + 1) * parts[p].states();
      }
      if (words <= MOST_WORDS) {
        return Optional.of(new Ahead(day, parts));
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
                Math.max(0, stage.least() - cells),
                (stage.fewest() - count) * stage.shortestMove());
    int rests = Math.max(0, (stretch + work + day.stretch - 1) / day.stretch - 1);
    int end = time + work + Math.max(0, rests - (mealCount - meals)) * day.pause;
    for (int meal = meals; meal < mealCount; meal++) {
      end += day.mealCells[meal];
    }
    return end + day.buffer(time - rested + work) <= day.cells;
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
    long working = (2L << day.stretch) - 2;
    boolean complete = parts[p].complete(count, cells, mask);
    boolean last = p == parts.length - 1;
    boolean over = last && complete && time > day.lastPin && meals == mealCount;
    long word = over ? working : 0;
    if (complete && !last) {
      word |= exercises(p + 1, 0, 0, parts[p + 1].mask(day.possible[p]), time, meals);
    }
    word |= exercises(p, count, cells, mask, time, meals);
    if ((word & working) != working && rests(p, count, cells, mask, time, meals)) {
      word |= working;
    }
    return word;
  }

  private boolean rests(int p, int count, int cells, int mask, int time, int meals) {
    if (day.pinAt[time] >= 0) {
      return false;
    }
    if (day.pause > 0
        && day.free(time, time + day.pause)
        && (word(p, time + day.pause, meals, count, cells, mask) & 1) != 0) {
      return true;
    }
    return meals < mealCount
        && day.mealFrom[meals] <= time
        && time <= day.mealTo[meals]
        && day.free(time, time + day.mealCells[meals])
        && (word(p, time + day.mealCells[meals], meals + 1, count, cells, mask) & 1) != 0;
  }

  private long exercises(int p, int count, int cells, int mask, int time, int meals) {
    Part part = parts[p];
    if (part.stage.counted() && count == part.stage.most()) {
      return 0;
    }
    long word = 0;
    for (Step step : part.steps) {
      int end = time + step.cells();
      if (step.pinned() == day.pinAt[time]
          && day.free(time, end)
          && cells + step.cells() <= part.stage.longest()) {
        int after = Math.min(count + 1, part.counts - 1);
        int cellsAfter = Math.min(cells + step.cells(), part.cells - 1);
        word |= word(p, end, meals, after, cellsAfter, mask | step.gain()) >>> step.cells();
      }
    }
    return word;
  }
}
