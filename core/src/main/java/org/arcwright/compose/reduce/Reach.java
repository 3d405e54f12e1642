package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.jspecify.annotations.Nullable;

/** Which work products can exist at all, starting from those given. */
final class Reach {
  private final Set<String> products;

  private Reach(Set<String> products) {
    this.products = products;
  }

  /**
   * Products given, yielded by exercises that need nothing else, yielded by exercises that need
   * these, and so on. Time is linear for each link in the longest chain of needs.
   */
  static Reach of(Collection<String> given, List<Exercise> exercises) {
    Reach reach = new Reach(new HashSet<>(given));
    List<Exercise> waiting = exercises;
    int before;
    do {
      before = waiting.size();
      List<Exercise> still = new ArrayList<>();
      for (Exercise exercise : waiting) {
        if (reach.missing(exercise) == null) {
          reach.products.addAll(exercise.yields());
        } else {
          still.add(exercise);
        }
      }
      waiting = still;
    } while (waiting.size() < before);
    return reach;
  }

  /** The first product that the exercise needs and that cannot exist; else null. */
  @Nullable String missing(Exercise exercise) {
    for (String need : exercise.needs()) {
      if (!products.contains(need)) {
        return need;
      }
    }
    return null;
  }
}
