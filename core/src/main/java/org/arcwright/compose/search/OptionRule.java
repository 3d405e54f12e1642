package org.arcwright.compose.search;

import org.arcwright.catalog.InvalidValueException;

/**
 * How many options are asked for, and how they have to differ.
 *
 * @param count how many, the best included, 1 to {@value #MOST}
 * @param share how many per cent of the exercises of every earlier option may come again, 0 to 99;
 *     of its exercises the share is rounded down
 * @param within by how many per cent an option may cost more than the best, 0 to 1,000; rounded
 *     down
 */
public record OptionRule(int count, int share, int within) {
  /** Most options. */
  public static final int MOST = 9;

  /** Refuses what is out of range. */
  public OptionRule {
    between("options", count, 1, MOST);
    between("share", share, 0, 99);
    between("within", within, 0, 1000);
  }

  private static void between(String field, int value, int least, int most) {
    if (value < least || value > most) {
      throw new InvalidValueException(
          field, value, "a whole number from " + least + " to " + most + " is right");
    }
  }

  /** How many of so many exercises may come again. */
  int mostShared(int exercises) {
    return exercises * share / 100;
  }

  /** Most cost of an option beside a best of that cost. */
  long ceiling(long best) {
    return best + best * within / 100;
  }
}
