package org.arcwright.compose.explain;

import java.time.Duration;
import java.util.Set;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Checks;

/**
 * One thing that a brief asks for, or a rule of the catalog, and that a facilitator could ask for
 * in a smaller measure, or not at all. What only makes an agenda dearer, such as the energy curve,
 * is none.
 */
public sealed interface Wish {
  /**
   * Everything together ends in time.
   *
   * @param most time from the first start to the last end
   */
  record Cap(Duration most) implements Wish {}

  /**
   * An exercise is in.
   *
   * @param exercise its id
   */
  record Include(String exercise) implements Wish {}

  /**
   * An exercise is in and starts at a time.
   *
   * @param pin which, and when
   */
  record Pinned(Wishes.Pin pin) implements Wish {}

  /**
   * One of the sponsor's own items is in, where and when the brief says so.
   *
   * @param item it
   */
  record Own(OwnItem item) implements Wish {}

  /**
   * There is a meal.
   *
   * @param meal when and how long
   */
  record Meal(org.arcwright.brief.Meal meal) implements Wish {}

  /**
   * An exercise stays out.
   *
   * @param exercise its id
   */
  record LeaveOut(String exercise) implements Wish {}

  /**
   * Exercises use no other tools than these.
   *
   * @param atHand ids
   */
  record Tools(Set<String> atHand) implements Wish {
    /** Copies the set. */
    public Tools {
      atHand = Checks.ids("tools", atHand);
    }
  }

  /**
   * No exercise is more personal than this.
   *
   * @param most 0 not at all to 3 deeply
   */
  record Openness(int most) implements Wish {}

  /**
   * Nobody works longer in a row.
   *
   * @param longest minutes of work without a break
   */
  record Stretch(Duration longest) implements Wish {}

  /**
   * Ordinary breaks are so long.
   *
   * @param length zero means that there are none
   */
  record Pause(Duration length) implements Wish {}

  /**
   * So much is kept free at the close.
   *
   * @param percent of the exercise minutes
   */
  record Buffer(int percent) implements Wish {}

  /**
   * A rule of the catalog holds.
   *
   * @param name the rule's
   */
  record Rule(String name) implements Wish {}

  /**
   * So many people work together.
   *
   * @param count how many
   */
  record People(int count) implements Wish {}

  /**
   * No more than these work products exist beforehand, and what the goal takes for granted.
   *
   * @param products ids
   */
  record Given(Set<String> products) implements Wish {
    /** Copies the set. */
    public Given {
      products = Checks.ids("given", products);
    }
  }
}
