package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/** Which work products come from somewhere and lead somewhere. */
public final class WordUse {
  private final Map<String, Set<String>> leaving = new HashMap<>();
  private final Set<String> given = new HashSet<>();
  private final Set<String> wanted = new HashSet<>(Product.ALWAYS_OF_USE);

  /** The use of words by all exercises and goals there are. */
  public WordUse(Collection<Exercise> exercises, Collection<Goal> goals) {
    for (Exercise exercise : exercises) {
      exercise
          .yields()
          .forEach(word -> leaving.computeIfAbsent(word, w -> new HashSet<>()).add(exercise.id()));
      wanted.addAll(exercise.needs());
    }
    for (Goal goal : goals) {
      given.addAll(goal.given());
      wanted.addAll(goal.yields());
      goal.arc().forEach(phase -> wanted.addAll(phase.yields()));
    }
  }

  /** What is wrong with the needs and yields of the exercise in the file. */
  List<Problem> check(CatalogFile file, Exercise exercise) {
    List<Problem> found = new ArrayList<>();
    if (file.isSound("needs")) {
      int i = 0;
      for (String word : exercise.needs()) {
        if (!comesFromElsewhere(word, exercise.id())) {
          found.add(
              file.problem(
                  "needs[" + i + "]",
                  "needs",
                  word,
                  "no other exercise leaves it and no goal is given it, so this one can never be"
                      + " used; strike it, or add an exercise that leaves it"));
        }
        i++;
      }
    }
    if (file.isSound("yields")) {
      int i = 0;
      for (String word : exercise.yields()) {
        if (!isWanted(word)) {
          found.add(
              file.problem(
                  "yields[" + i + "]",
                  "yields",
                  word,
                  "no exercise needs it and no goal asks for it; name what others can use"));
        }
        i++;
      }
    }
    return found;
  }

  /** Whether an exercise needs it, a goal asks for it, or it is of use on any way. */
  public boolean isWanted(String word) {
    return wanted.contains(word);
  }

  /** Whether a goal is given it, or an exercise with another id leaves it. */
  public boolean comesFromElsewhere(String word, String id) {
    Set<String> others = leaving.getOrDefault(word, Set.of());
    return given.contains(word)
        || others.size() > 1
        || (others.size() == 1 && !others.contains(id));
  }
}
