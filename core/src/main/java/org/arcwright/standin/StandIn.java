package org.arcwright.standin;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * An exercise that takes another's place.
 *
 * @param exercise its id
 * @param title in words
 * @param length how long, over zero
 * @param change how much longer than what it stands in for; shorter is negative
 * @param points how much dearer the agenda becomes with it, in the composer's points; less than
 *     nothing where the agenda was not the best
 * @param tools ids of the tools that it leans on in this mode
 * @param materials what to prepare beside them
 */
public record StandIn(
    String exercise,
    String title,
    Duration length,
    Duration change,
    long points,
    Set<String> tools,
    List<String> materials) {
  /** Refuses one of no length. */
  public StandIn {
    Checks.id("exercise", exercise);
    title = Checks.text("title", title, 60);
    if (length.isZero() || length.isNegative()) {
      throw new InvalidValueException("minutes", length.toMinutes(), "over 0 is right");
    }
    tools = Checks.ids("tools", tools);
    materials = Checks.lines("materials", materials, 400);
  }
}
