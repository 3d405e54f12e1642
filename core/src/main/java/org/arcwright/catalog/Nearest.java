package org.arcwright.catalog;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that a person may have meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word nearest to {@code word} by edit distance (Levenshtein 1966), if one is near
   * enough: at most a third of the letters differ. Time is the product of the lengths for each
   * known word.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > 80) {
      return Optional.empty();
    }
    return known.stream()
        .filter(other -> distance(word, other) <= Math.max(1, word.length() / 3))
        .min(Comparator.<String>comparingInt(other -> distance(word, other)).thenComparing(o -> o));
  }

  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(above, row[j - 1]) + 1);
        diagonal = above;
      }
    }
    return row[b.length()];
  }
}
