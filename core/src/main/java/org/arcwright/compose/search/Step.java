package org.arcwright.compose.search;

/**
 * From a place to the start of the exercise after it, whichever that is; for {@link Scout}.
 *
 * @param at the place
 * @param phase of the exercise
 * @param count exercises in that phase, this one included
 * @param spent cells in that phase before it
 * @param time its start
 * @param stretch exercise cells since the last break before it
 * @param rest cells of break before it, or 0
 * @param meals meals had before it
 * @param paid for what is certain of it: the break, and the phase that ends
 */
record Step(
    Place at,
    int phase,
    int count,
    int spent,
    int time,
    int stretch,
    int rest,
    int meals,
    long paid) {
  /** A step within a phase, or into the next. */
  static Step of(Facts facts, Place at, int phase, int rest, int meals, long extra) {
    boolean opens = phase != at.phase();
    return new Step(
        at,
        phase,
        opens ? 1 : at.count() + 1,
        opens ? 0 : at.spent(),
        at.time() + rest,
        rest > 0 ? 0 : at.stretch(),
        rest,
        meals,
        opens ? extra + facts.shareCost[at.phase()][at.spent()] : extra);
  }

  /** Whether the exercise is its phase's first after another phase. */
  boolean opens() {
    return phase != at.phase();
  }

  /** By how much so many cells more change the price of the phase's minutes. */
  long share(Facts facts, int length) {
    int[] costs = facts.shareCost[phase];
    return costs[spent + length] - (long) costs[spent];
  }

  /** The place after the exercise. */
  Place place(int candidate, int length, long products, long price) {
    return new Place(
        time + length,
        stretch + length,
        phase,
        count,
        spent + length,
        meals,
        at.exercised() + length,
        products,
        at.cost() + price,
        candidate,
        length,
        rest,
        at);
  }
}
