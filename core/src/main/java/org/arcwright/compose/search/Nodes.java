package org.arcwright.compose.search;

/**
 * How the states of a relaxation are numbered. A node is a time, a phase, the meals had, and the
 * exercises and cells spent on the phase; the stretches that can stand there are told apart within
 * it.
 *
 * <p>Exercises are counted up to a phase's fewest; beyond that the cells spent tell enough, unless
 * so few more are allowed that counting them is cheap.
 */
final class Nodes {
  /** Most nodes that a table may have; beyond them all cells of a phase share one. */
  private static final long MOST = 24_000_000;

  /** Where at most so many exercises over the fewest are allowed, they are counted. */
  private static final int FEW_MORE = 1;

  final Model model;

  /** Whether nodes tell cells apart; coarse ones do not. */
  final boolean exact;

  private final int width;
  private final int[] phaseOffset;
  private final int[] mealSize;
  private final boolean[] counted;
  private final int[] counts;
  private final int[] cellSize;

  Nodes(Model model, boolean exact) {
    this.model = model;
    this.exact = exact && nodes(model) <= MOST;
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
      counted[p] = counted(stage, this.exact);
      counts[p] = counts(stage, this.exact);
      cellSize[p] = this.exact ? stage.maxCells + 1 : 1;
      mealSize[p] = 1 + counts[p] * cellSize[p];
      offset += mealSize[p] * (model.mealFrom.length + 1);
    }
    this.width = offset;
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

  /** How many there are. */
  int size() {
    return width * (model.cells + 1);
  }

  /** How many there are at one time. */
  int width() {
    return width;
  }

  /** How many there are for a phase at one time; they follow each other. */
  int width(int phase) {
    return mealSize[phase] * (model.mealFrom.length + 1);
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

  /** Whether a phase may end at a node, as far as can be told. */
  boolean complete(Stage stage, int count, int cells) {
    return count >= Math.min(stage.fewest, counts[stage.number])
        && (!exact || (cells >= stage.minCells && cells <= stage.maxCells));
  }

  /** The count after one more exercise, as it is followed; -1 if there may be none. */
  int next(Stage stage, int count) {
    int p = stage.number;
    return count < counts[p] ? count + 1 : counted[p] ? -1 : count;
  }
}
