package org.arcwright.compose;

import java.util.Optional;
import org.arcwright.compose.reduce.Refusal;

/**
 * An exercise that the brief does not allow, and why.
 *
 * @param exercise its id
 * @param field the key of the brief that does not, such as {@code tools} or {@code
 *     wishes.leave-out}; nothing if {@link Composer#composeWithout} left it out
 * @param reason in words, such as "needs what is not at hand: breakout rooms"
 */
public record LeftOut(String exercise, Optional<String> field, String reason) {
  /** What the reason says before a colon: the same for all that are left out for one cause. */
  public String cause() {
    return new Refusal(field, reason).cause();
  }
}
