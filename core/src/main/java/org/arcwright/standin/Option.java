package org.arcwright.standin;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;

/**
 * An exercise that may take the place of another, so far as that place alone can tell.
 *
 * @param exercise it
 * @param minutes how long it then takes
 * @param more minutes than what it stands in for; negative if fewer
 * @param price in the composer's points
 * @param kept what it leaves that the other leaves, too
 */
record Option(Exercise exercise, int minutes, int more, long price, Set<String> kept) {
  static Option of(Exercise exercise, Set<String> yields, int minutes, int more, long price) {
    Set<String> kept = new HashSet<>(yields);
    kept.retainAll(exercise.yields());
    return new Option(exercise, minutes, more, price, kept);
  }

  StandIn standIn(Mode mode) {
    return new StandIn(
        exercise.id(),
        exercise.title(),
        Duration.ofMinutes(minutes),
        Duration.ofMinutes(more),
        price,
        exercise.in(mode).tools(),
        exercise.notes().materials());
  }
}
