package org.arcwright.record;

import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * Something left open or parked.
 *
 * @param what at most 400 characters
 * @param who sees to it, if anybody does
 */
public record Point(String what, Optional<String> who) {
  /** Refuses empty texts. */
  public Point {
    what = Checks.text("what", what, 400);
    who = who.map(text -> Checks.text("who", text, 120));
  }
}
