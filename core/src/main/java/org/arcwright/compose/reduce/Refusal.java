package org.arcwright.compose.reduce;

import java.util.Optional;

/**
 * Why something may not be in an agenda.
 *
 * @param field the key of the brief that says so, such as {@code tools}; nothing if it is no brief
 *     that does
 * @param reason in words that may follow a title and a colon; what stands before a colon in it is
 *     the same for all that are refused for one cause
 */
public record Refusal(Optional<String> field, String reason) {
  /** The brief names it among what to leave out. */
  public static final Refusal BY_NAME = by("wishes.leave-out", "left out by the brief");

  /** By a key of the brief. */
  static Refusal by(String field, String reason) {
    return new Refusal(Optional.of(field), reason);
  }

  /** What the reason says before a colon. */
  public String cause() {
    int colon = reason.indexOf(": ");
    return colon < 0 ? reason : reason.substring(0, colon);
  }
}
