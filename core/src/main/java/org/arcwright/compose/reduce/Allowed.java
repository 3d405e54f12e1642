package org.arcwright.compose.reduce;

import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;

/**
 * An exercise that the brief allows. Its products stand here once more as lists, for they are gone
 * through several times, and sets are slow to walk; its steps are walked only when it is read.
 *
 * @param exercise it
 * @param format in which the group spends most of it
 * @param lengths in which it fits
 * @param needs products
 * @param yields products
 */
record Allowed(
    Exercise exercise, Format format, Lengths lengths, List<String> needs, List<String> yields) {
  static Allowed of(Exercise exercise, int people, Lengths lengths) {
    return new Allowed(
        exercise,
        exercise.format(people),
        lengths,
        List.copyOf(exercise.needs()),
        List.copyOf(exercise.yields()));
  }
}
