package org.arcwright.record;

import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * What somebody takes along, as it was said.
 *
 * @param said word for word, at most 1,000 characters
 * @param by who said it, where that person wants to be named
 */
public record Takeaway(String said, Optional<String> by) {
  /** Refuses empty texts. */
  public Takeaway {
    said = Checks.text("said", said, 1000);
    by = by.map(text -> Checks.text("by", text, 120));
  }
}
