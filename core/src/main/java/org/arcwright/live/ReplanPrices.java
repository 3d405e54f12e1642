package org.arcwright.live;

/**
 * What changes cost on the day, in the composer's points: ten minutes one level off the energy
 * curve are 100. A plan has been agreed upon and prepared, so to keep to it is free, and whatever
 * departs from it has to be worth its trouble. Common practice, no source: the figures say how we
 * would decide if both could not be had.
 */
final class ReplanPrices {
  /** An exercise that was not planned has to be prepared while people wait. */
  static final int NEW = 400;

  /** Minutes that an exercise has to save at the least to be worth changing it for another. */
  static final int LEAST_SAVING = 10;

  /**
   * A planned exercise that does not take place was prepared in vain, and people may ask for it.
   */
  static final int LEFT_OUT = 300;

  /** Points for each minute of an exercise that does not take place, as for one left over. */
  static final int LEFT_OUT_MINUTE = 10;

  /** Points for each minute taken off a planned exercise: people feel hurried. */
  static final int CUT = 20;

  /** Points, times minutes cut, times the share of the plan that is cut: better all by a little. */
  static final int CUT_SHARE = 100;

  /** Points for each minute more than planned, where time has to be filled. */
  static final int LONGER = 10;

  /** What a minute more is worth where an exercise was planned below its usual time. */
  static final int RELIEF = 20;

  /** What a minute more is worth where people sort, choose and decide: talk runs over there. */
  static final int DISCUSSION = 10;

  /** What a minute more is worth elsewhere. */
  static final int MORE_TIME = 5;

  /**
   * The chance to end on time, in per cent, from which on nothing has to change. Planners call a
   * date with four chances out of five safe; common practice, no source.
   */
  static final int SURE = 80;

  private ReplanPrices() {}

  /** Points for taking so many minutes off what was planned. */
  static int cut(int planned, int minutes) {
    return CUT * minutes + CUT_SHARE * minutes * minutes / planned;
  }

  /** Points for giving it another length than planned. */
  static int resized(int planned, int length) {
    return length <= planned ? cut(planned, planned - length) : LONGER * (length - planned);
  }

  /** Points for leaving out what was planned for so many minutes. */
  static int leftOut(int planned) {
    return LEFT_OUT + LEFT_OUT_MINUTE * planned;
  }
}
