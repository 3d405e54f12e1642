package org.arcwright.brief;

import java.util.List;

/**
 * Something in a brief that is allowed and that few facilitators would want.
 *
 * @param field where it is said, as a path in the file such as {@code rhythm.break}
 * @param value what is said there, as a person would write it
 * @param name what is odd, in a word for programs such as {@code short-meal}, by which it can be
 *     said in another language
 * @param details figures and names within the remark, in the order in which they stand there
 * @param remark why it is odd, what would be usual, and what that rests on, in English
 */
public record Oddity(String field, String value, String name, List<String> details, String remark) {
  /** Copies the list. */
  public Oddity {
    details = List.copyOf(details);
  }
}
