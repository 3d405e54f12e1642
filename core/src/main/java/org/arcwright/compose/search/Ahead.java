package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;
import org.arcwright.compose.instance.Instance;

/**
 * What is still to come from a place at the very least, and whether the day has room for it. It
 * refuses places from which nothing fits, and few others.
 */
final class Ahead {
  private final Facts facts;
  private final int[] fewest;
  private final int[] minCells;
  private final int[] maxCells;

  /** The shortest exercise of each phase. */
  private final int[] shortest;

  /** The shortest of all. */
  private final int quickest;

  /** For each wish's bit, the shortest length of what is wished. */
  private final int[] wishLength = new int[Long.SIZE];

  /**
   * Takes the facts.
   *
   * @param usable candidates of each phase
   */
  Ahead(Facts facts, int[][] usable) {
    this.facts = facts;
    Instance instance = facts.instance;
    List<Instance.Phase> phases = instance.phases();
    this.fewest = phases.stream().mapToInt(phase -> phase.count().min()).toArray();
    this.minCells = phases.stream().mapToInt(phase -> phase.minutes().min() / facts.grid).toArray();
    this.maxCells = phases.stream().mapToInt(phase -> phase.minutes().max() / facts.grid).toArray();
    this.shortest = new int[phases.size()];
    for (int p = 0; p < shortest.length; p++) {
      shortest[p] = shortest(usable[p]);
    }
    this.quickest = Arrays.stream(shortest).min().orElse(1);
  }

  private int shortest(int[] candidates) {
    int least = facts.cells;
    for (int candidate : candidates) {
      int length = facts.instance.candidates().get(candidate).lengths().get(0) / facts.grid;
      least = Math.min(least, length);
      for (long rest = facts.yields[candidate] & facts.wishes; rest != 0; rest &= rest - 1) {
        wishLength[Long.numberOfTrailingZeros(rest)] = length;
      }
    }
    return least;
  }

  /** Whether each phase by itself has room for what it must hold. */
  boolean mayBegin() {
    for (int p = 0; p < facts.phases; p++) {
      if (here(p, 0, 0, 0) > maxCells[p]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether there is room for what must come after an exercise, as far as this can tell.
   *
   * @param step to the exercise
   * @param length its cells
   * @param had products that exist after it
   */
  boolean fits(Step step, int length, long had) {
    int phase = step.phase();
    int time = step.time() + length;
    int spent = step.spent() + length;
    int exercised = step.at().exercised() + length;
    int here = here(phase, step.count(), spent, had);
    int least = here + until(phase, facts.phases, had);
    return here <= maxCells[phase] - spent
        && fitsDay(time, step.stretch() + length, step.meals(), exercised, least)
        && meetsPin(time, phase, here, had)
        && (step.meals() == facts.mealTo.length || time <= facts.mealTo[step.meals()]);
  }

  private boolean fitsDay(int time, int stretch, int meals, int exercised, int least) {
    int end = time + least + facts.buffer(exercised + least);
    int breaks = (stretch + least - 1) / facts.longestStretch;
    for (int m = meals; m < facts.mealCells.length; m++) {
      end += facts.mealCells[m];
      breaks--;
    }
    return end + Math.max(0, breaks) * facts.breakCells <= facts.cells
        && (breaks <= 0 || facts.breakCells > 0);
  }

  /** Whether the next pinned exercise can still start in time, in a phase that can use it. */
  private boolean meetsPin(int time, int phase, int here, long had) {
    int pin = facts.pins.at[time] >= 0 ? time : facts.pins.next[time];
    if (pin > facts.cells) {
      return true;
    }
    int candidate = facts.pins.at[pin];
    int first = phase;
    while (first < facts.phases && !facts.usable(candidate, first)) {
      first++;
    }
    int gap = pin - time;
    return first < facts.phases
        && (gap == 0
            || gap >= Math.min(quickest, facts.breakCells > 0 ? facts.breakCells : quickest))
        && (first == phase || here + until(phase, first, had) <= gap);
  }

  /** Cells that a phase still needs. */
  private int here(int phase, int count, int spent, long had) {
    int least = Math.max(minCells[phase] - spent, (fewest[phase] - count) * shortest[phase]);
    long missing = facts.due[phase] & ~had;
    return Math.max(missing == 0 ? 0 : shortest[phase], Math.max(least, wished(missing)));
  }

  /** Cells that the phases after one need, up to another. */
  private int until(int phase, int end, long had) {
    int cells = 0;
    for (int p = phase + 1; p < end; p++) {
      cells += here(p, 0, 0, had);
    }
    return cells;
  }

  private int wished(long missing) {
    int cells = 0;
    for (long rest = missing & facts.wishes; rest != 0; rest &= rest - 1) {
      cells += wishLength[Long.numberOfTrailingZeros(rest)];
    }
    return cells;
  }
}
