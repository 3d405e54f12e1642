package org.arcwright.brief;

import java.util.Set;

/**
 * Something in a brief that is allowed and that few facilitators would want.
 *
 * @param field where it is said, as a path in the file such as {@code rhythm.break}
 * @param value what is said there, as a person would write it
 * @param remark why it is odd, what would be usual, and what that rests on
 */
public record Oddity(String field, String value, String remark) {
  /** The oddity of one word in a list. */
  static Oddity inList(String field, Set<String> list, String word, String remark) {
    int index = list.stream().toList().indexOf(word);
    return new Oddity(field + "[" + index + "]", word, remark);
  }
}
