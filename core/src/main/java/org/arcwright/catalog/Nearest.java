package org.arcwright.catalog;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Finds the word that a person may have meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word nearest to {@code word}, if one is near enough: at most a third of the letters
   * differ; or else the nearest that has all its parts between hyphens, or whose parts it has. The
   * distance counts letters that are missing, added or other (Levenshtein 1966) and neighbours that
   * changed places (Damerau 1964). Time is the product of the lengths for each known word.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > 80) {
      return Optional.empty();
    }
    int near = Math.max(1, word.length() / 3);
    return nearest(word, known, other -> distance(word, other) <= near)
        .or(() -> nearest(word, known, other -> sharesParts(word, other)));
  }

  private static Optional<String> nearest(
      String word, Collection<String> known, Predicate<String> wanted) {
    return known.stream()
        .filter(wanted)
        .min(Comparator.<String>comparingInt(other -> distance(word, other)).thenComparing(o -> o));
  }

  private static boolean sharesParts(String a, String b) {
    Set<String> ofA = Set.copyOf(Arrays.asList(a.split("-", -1)));
    Set<String> ofB = Set.copyOf(Arrays.asList(b.split("-", -1)));
    return ofA.containsAll(ofB) || ofB.containsAll(ofA);
  }

  private static int distance(String a, String b) {
    int[] twoBefore = new int[b.length() + 1];
    int[] before = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] oldest = twoBefore;
      twoBefore = before;
      before = row;
      row = oldest;
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(before[j], row[j - 1]) + 1);
        if (swapped(a, i, b, j)) {
          row[j] = Math.min(row[j], twoBefore[j - 2] + 1);
        }
      }
    }
    return row[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
