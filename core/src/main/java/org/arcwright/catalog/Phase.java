package org.arcwright.catalog;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * One phase of a goal's arc.
 *
 * @param name such as {@code open}, unique in its arc
 * @param title in words for participants, such as "Arrive"
 * @param kinds kinds of exercise allowed
 * @param fewest exercises at the least, 1 or more
 * @param most exercises at the most
 * @param share its part of the working time
 * @param yields work products that exist at its end
 */
public record Phase(
    String name,
    String title,
    Set<Kind> kinds,
    int fewest,
    int most,
    Share share,
    Set<String> yields) {
  /**
   * Part of the working time, in per cent: 0 to 100, ascending.
   *
   * @param min least
   * @param target wished
   * @param max most
   */
  public record Share(int min, int target, int max) {
    /** Refuses shares outside 0 to 100 or turned round. */
    public Share {
      Checks.range("share", min, 0, 100);
      Checks.range("share", max, 0, 100);
      if (min > target || target > max) {
        throw new InvalidValueException(
            "share",
            "[" + min + ", " + target + ", " + max + "]",
            "write them ascending: min, target, max");
      }
    }
  }

  /** Refuses empty kinds and counts that are turned round. */
  public Phase {
    Checks.id("name", name);
    title = Checks.text("title", title, 60);
    if (kinds.isEmpty()) {
      throw new InvalidValueException("kinds", "empty", "name at least one kind of exercise");
    }
    kinds = Collections.unmodifiableSet(EnumSet.copyOf(kinds));
    Checks.range("count", fewest, 1, 30);
    Checks.range("count", most, 1, 30);
    if (fewest > most) {
      throw new InvalidValueException(
          "count", "[" + fewest + ", " + most + "]", "write them ascending: fewest, most");
    }
    yields = Checks.ids("yields", yields);
  }
}
