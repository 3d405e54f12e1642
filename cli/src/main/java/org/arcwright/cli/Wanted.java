package org.arcwright.cli;

import java.util.Collection;
import java.util.Optional;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Layers;
import org.arcwright.catalog.Nearest;

/** Looks up what a person named on the command line. */
final class Wanted {
  private Wanted() {}

  /** The exercise of that id. */
  static Exercise exercise(Layers layers, String id) {
    return layers.catalog().exercise(id).orElseThrow(() -> noExercise(layers, id));
  }

  private static Refusal noExercise(Layers layers, String id) {
    Optional<Layers.Origin> origin = layers.ofExercise(id);
    return origin.isPresent()
        ? new Refusal("\"" + id + "\": " + origin.get().layer() + " takes this exercise out")
        : unknown("exercise", id, layers.catalog().exercises().keySet());
  }

  /** A word that is one of those known. */
  static String word(String what, String word, Collection<String> known) {
    if (!known.contains(word)) {
      throw unknown(what, word, known);
    }
    return word;
  }

  /** What to say of a word that is none of those known. */
  static Refusal unknown(String what, String word, Collection<String> known) {
    String near =
        Nearest.to(word, known)
            .map(other -> "; perhaps " + other)
            .orElse(known.size() > 30 ? "" : "; there are " + String.join(", ", known));
    return new Refusal("\"" + word + "\": the catalog has no such " + what + near);
  }
}
