package org.arcwright.compose.reduce;

/** How much of the cap is left for exercises. */
final class WorkingTime {
  private WorkingTime() {}

  /**
   * Exercise minutes to expect: the cap without meals, the closing buffer and as many ordinary
   * breaks as exercises of that length need, if they fill {@link ExchangeRates#STRETCH_FILLED} per
   * cent of the longest stretch.
   */
  static int minutes(Timing timing, int bufferPercent) {
    int meals = timing.meals().stream().mapToInt(meal -> meal.minutes()).sum();
    int atHand = Math.max(0, timing.cap() - meals);
    int filled = timing.stretch().max() * ExchangeRates.STRETCH_FILLED / 100;
    int pauses = 0;
    while (true) {
      int exercises = withoutBuffer(atHand - pauses * timing.breakMinutes(), bufferPercent);
      int room = (pauses + timing.meals().size() + 1) * filled;
      if (exercises <= room) {
        return exercises;
      }
      if (timing.breakMinutes() == 0) {
        return room;
      }
      pauses++;
    }
  }

  private static int withoutBuffer(int minutes, int bufferPercent) {
    return Math.max(0, minutes) * 100 / (100 + bufferPercent);
  }
}
