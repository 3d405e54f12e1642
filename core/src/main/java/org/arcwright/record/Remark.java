package org.arcwright.record;

import java.time.Duration;
import org.arcwright.catalog.Checks;

/**
 * Something noted on the day.
 *
 * @param at from the workshop's planned start
 * @param text at most 2,000 characters
 */
public record Remark(Duration at, String text) {
  /** Refuses an empty text. */
  public Remark {
    text = Checks.text("text", text, 2000);
  }
}
