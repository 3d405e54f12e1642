package org.arcwright.record;

import java.time.LocalDate;
import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * What somebody will do.
 *
 * @param who will do it
 * @param what at most 400 characters
 * @param when it is to be done, if a day was named
 */
public record Action(String who, String what, Optional<LocalDate> when) {
  /** Refuses empty texts. */
  public Action {
    who = Checks.text("who", who, 120);
    what = Checks.text("what", what, 400);
  }
}
