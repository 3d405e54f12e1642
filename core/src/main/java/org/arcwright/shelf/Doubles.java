package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.arcwright.catalog.Exercise;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/** Exercises that are the same, or nearly, under two ids. */
final class Doubles {
  /**
   * From here on two texts tell nearly the same. With words weighted by how rare they are, no two
   * of the built-in exercises come over 0.5, and a copy with a third of its words changed stays
   * above.
   */
  private static final double NEARLY = 0.6;

  private final Likeness likeness;
  private final List<Exercise> seen;

  /**
   * @param others the exercises that are not being checked
   */
  Doubles(Likeness likeness, List<Exercise> others) {
    this.likeness = likeness;
    this.seen = new ArrayList<>(others);
  }

  /** What is wrong with the exercise in the file, which the next one is held against, too. */
  List<Problem> check(CatalogFile file, Exercise exercise) {
    List<Problem> found = new ArrayList<>();
    if (file.isSound("title")) {
      seen.stream()
          .filter(other -> !other.id().equals(exercise.id()))
          .filter(other -> title(other).equals(title(exercise)))
          .findFirst()
          .map(other -> other.id() + " has it, too; choose another")
          .map(remedy -> file.problem("title", "title", exercise.title(), remedy))
          .ifPresent(found::add);
    }
    if (file.isSound("opening") && file.isSound("steps")) {
      nearest(file, exercise, found);
    }
    seen.add(exercise);
    return found;
  }

  private void nearest(CatalogFile file, Exercise exercise, List<Problem> found) {
    double most = NEARLY;
    Exercise nearest = null;
    for (Exercise other : seen) {
      double like = other.id().equals(exercise.id()) ? 0 : likeness.of(exercise, other);
      if (like >= most) {
        most = like;
        nearest = other;
      }
    }
    if (nearest != null) {
      found.add(
          file.problem(
              "id",
              "nearly the same as " + nearest.id(),
              Math.round(most * 100) + " % alike",
              "keep one of the two, or let purpose and steps say what is different"));
    }
  }

  private static String title(Exercise exercise) {
    return exercise.title().toLowerCase(Locale.ROOT);
  }
}
