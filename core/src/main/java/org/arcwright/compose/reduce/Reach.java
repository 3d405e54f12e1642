package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Which exercises can never have what they need. */
final class Reach {
  private Reach() {}

  /**
   * The exercises out of reach by id, each with the first product that it needs and that cannot
   * exist. Those exist that are given, that exercises yield which need nothing else, that exercises
   * yield which need these, and so on. Time is linear for each link in the longest chain of needs.
   */
  static Map<String, String> missing(Collection<String> given, List<Allowed> exercises) {
    Set<String> products = new HashSet<>(given);
    List<Allowed> waiting = exercises;
    int before;
    do {
      before = waiting.size();
      List<Allowed> still = new ArrayList<>();
      for (Allowed exercise : waiting) {
        if (missing(exercise, products) == null) {
          products.addAll(exercise.yields());
        } else {
          still.add(exercise);
        }
      }
      waiting = still;
    } while (waiting.size() < before);
    Map<String, String> missing = new TreeMap<>();
    for (Allowed exercise : waiting) {
      String product = missing(exercise, products);
      if (product != null) {
        missing.put(exercise.exercise().id(), product);
      }
    }
    return missing;
  }

  private static @Nullable String missing(Allowed exercise, Set<String> products) {
    for (String need : exercise.needs()) {
      if (!products.contains(need)) {
        return need;
      }
    }
    return null;
  }
}
