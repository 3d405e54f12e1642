package org.arcwright.shelf;

import org.arcwright.catalog.Exercise;

/**
 * How alike the texts of two exercises are. The core has no measure of its own: there are libraries
 * for it, and whoever embeds the core chooses one.
 */
@FunctionalInterface
public interface Likeness {
  /** No measure: no two texts are alike. */
  Likeness UNKNOWN = (one, other) -> 0;

  /** From 0, nothing in common, to 1, the same; the same both ways round. */
  double of(Exercise one, Exercise other);
}
