package org.arcwright.compose.search;

import java.util.Arrays;

/**
 * The least price of ending at each time, the last stretch apart. How many breaks there were is not
 * known to the bound, so the cheapest number that fits is assumed, and charged the toll.
 */
final class Ends {
  private Ends() {}

  static long[] of(Model model, boolean broken) {
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
}
