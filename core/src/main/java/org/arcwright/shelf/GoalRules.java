package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/** What a goal's arc must hold so that a workshop can follow it. */
final class GoalRules {
  private static final int WHOLE = 100;

  private GoalRules() {}

  /** What is wrong with the goal in the file, given all exercises there are. */
  static List<Problem> check(CatalogFile file, Goal goal, Iterable<Exercise> exercises) {
    List<Problem> found = new ArrayList<>();
    if (!file.isSound("arc")) {
      return found;
    }
    for (int i = 0; i < goal.arc().size(); i++) {
      Phase phase = goal.arc().get(i);
      int j = 0;
      for (String product : phase.yields()) {
        if (!goal.given().contains(product) && !isLeft(product, phase, exercises)) {
          found.add(
              file.problem(
                  "arc[" + i + "].yields[" + j + "]",
                  "yields",
                  product,
                  "no exercise that may stand in this phase ("
                      + String.join(" or ", phase.kinds().stream().map(Kind::word).toList())
                      + ") leaves it; allow another kind, or strike it"));
        }
        j++;
      }
    }
    shares(file, goal, found);
    return found;
  }

  private static boolean isLeft(String product, Phase phase, Iterable<Exercise> exercises) {
    for (Exercise exercise : exercises) {
      if (phase.kinds().contains(exercise.kind()) && exercise.yields().contains(product)) {
        return true;
      }
    }
    return false;
  }

  private static void shares(CatalogFile file, Goal goal, List<Problem> found) {
    int least = goal.arc().stream().mapToInt(phase -> phase.share().min()).sum();
    int wished = goal.arc().stream().mapToInt(phase -> phase.share().target()).sum();
    int most = goal.arc().stream().mapToInt(phase -> phase.share().max()).sum();
    if (least > WHOLE) {
      found.add(share(file, "least", least, "lower some until they are 100 at most"));
    } else if (most < WHOLE) {
      found.add(share(file, "most", most, "raise some until they are 100 at least"));
    } else if (wished != WHOLE) {
      found.add(share(file, "wished", wished, "make them 100 together"));
    }
  }

  private static Problem share(CatalogFile file, String which, int sum, String remedy) {
    return file.problem("arc", "share", "the " + which + " shares are " + sum + " %", remedy);
  }
}
