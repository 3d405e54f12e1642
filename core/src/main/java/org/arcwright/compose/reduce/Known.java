package org.arcwright.compose.reduce;

import java.util.Collection;
import java.util.Set;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Nearest;

/** Refuses a word of the brief that names nothing. */
final class Known {
  private Known() {}

  /**
   * Checks each word against the known ones.
   *
   * @throws InvalidValueException for the first unknown word, with the nearest known one
   */
  static void check(String field, Collection<String> words, Set<String> known, String what) {
    for (String word : words) {
      if (!known.contains(word)) {
        throw unknown(field, word, known, what);
      }
    }
  }

  /** The refusal of one unknown word. */
  static InvalidValueException unknown(
      String field, String word, Collection<String> known, String what) {
    String remedy =
        Nearest.to(word, known)
            .map(near -> "perhaps " + near)
            .orElse(known.size() <= 12 ? "known are " + String.join(", ", known) : "check its id");
    return new InvalidValueException(field, word, "there is no such " + what + "; " + remedy);
  }
}
