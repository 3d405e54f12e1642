package org.arcwright.compose.reduce;

import java.util.List;
import org.arcwright.catalog.Exercise;

/**
 * An exercise that the brief allows. Its products stand here once more as lists, for they are gone
 * through several times, and sets are slow to walk.
 *
 * @param exercise it
 * @param lengths in which it fits
 * @param needs products
 * @param yields products
 */
record Allowed(Exercise exercise, Lengths lengths, List<String> needs, List<String> yields) {
  static Allowed of(Exercise exercise, Lengths lengths) {
    return new Allowed(
        exercise, lengths, List.copyOf(exercise.needs()), List.copyOf(exercise.yields()));
  }
}
