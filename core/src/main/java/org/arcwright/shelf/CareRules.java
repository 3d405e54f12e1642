package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Suitability;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/**
 * Cautions where they are due. What says of itself that it moves bodies or gets personal has them,
 * or it could not be read; here is what only its words betray.
 */
final class CareRules {
  private static final int PERSONAL = 2;

  private CareRules() {}

  /** What is wrong with the exercise in the file. */
  static List<Problem> check(CatalogFile file, Exercise exercise) {
    List<Problem> found = new ArrayList<>();
    boolean warned =
        !exercise.care().cautions().isEmpty()
            || exercise.modes().values().stream()
                .map(Suitability::cautions)
                .anyMatch(c -> !c.isEmpty());
    if (warned && exercise.care().optOut().isEmpty() && file.has("cautions")) {
      found.add(
          file.problem(
              "cautions",
              "opt-out",
              "missing",
              "where there is something to heed, say how a person may stay out of it"));
    }
    if (!warned && !exercise.moves() && file.isSound("moves")) {
      first(file, exercise, CarefulWords::ofBodies)
          .map(
              words ->
                  words.problem(
                      file,
                      "moves",
                      "such words ask bodies to move; add \"moves: true\", cautions and an opt-out"))
          .ifPresent(found::add);
    }
    if (!warned && exercise.openness() < PERSONAL && file.isSound("openness")) {
      first(file, exercise, CarefulWords::ofDisclosure)
          .map(
              words ->
                  words.problem(
                      file,
                      "openness",
                      "such words ask for what is personal; raise openness to 2 or 3, and add"
                          + " cautions and an opt-out"))
          .ifPresent(found::add);
    }
    return found;
  }

  /** Words that ask for care, and where they stand. */
  private record Telling(String path, String words) {
    Problem problem(CatalogFile file, String what, String remedy) {
      return file.problem(path, what, words, remedy);
    }
  }

  /** The first such words in the steps, else in the opening. */
  private static Optional<Telling> first(
      CatalogFile file, Exercise exercise, Function<String, Optional<String>> telling) {
    for (int i = 0; i < exercise.steps().size(); i++) {
      String path = "steps[" + i + "].text";
      Optional<String> words = telling.apply(exercise.steps().get(i).text());
      if (words.isPresent() && file.isSound(path)) {
        return Optional.of(new Telling(path, words.get()));
      }
    }
    return telling
        .apply(exercise.opening())
        .filter(words -> file.isSound("opening"))
        .map(words -> new Telling("opening", words));
  }
}
