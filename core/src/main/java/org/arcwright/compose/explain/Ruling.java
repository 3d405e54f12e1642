package org.arcwright.compose.explain;

import org.arcwright.brief.Brief;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.compose.LeftOut;

/** Which key of a brief an exercise is left out by. */
final class Ruling {
  static final String LEAVE_OUT = "wishes.leave-out";

  private Ruling() {}

  /** The key as it stands in a brief; what is decided first comes first, as where it is decided. */
  static String field(LeftOut leftOut, Exercise exercise, Brief brief, Goal goal) {
    if (goal.arc().stream().noneMatch(phase -> phase.kinds().contains(exercise.kind()))) {
      return "goal";
    }
    if (!exercise.serves(brief.group().count())) {
      return "people";
    }
    if (exercise.in(brief.mode()).fit() == 0) {
      return "mode";
    }
    if (leftOut.reason().startsWith("needs what is not at hand")) {
      return "tools";
    }
    if (exercise.openness() > brief.group().openness()) {
      return "people.openness";
    }
    if (leftOut.reason().startsWith("too long")) {
      return leftOut.reason().contains("without a break") ? "rhythm.stretch" : "cap";
    }
    return "given";
  }
}
