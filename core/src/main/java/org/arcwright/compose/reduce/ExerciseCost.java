package org.arcwright.compose.reduce;

import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;

/** What an exercise costs with this brief, wherever it stands. */
final class ExerciseCost {
  /** The work product of exercises after which people know each other. */
  private static final String INTRODUCTIONS = "introductions";

  private final int people;
  private final Mode mode;
  private final Acquaintance acquaintance;
  private final Set<String> usedLastTime;
  private final Purpose purpose;

  ExerciseCost(Brief brief, Purpose purpose) {
    this.people = brief.group().count();
    this.mode = brief.mode();
    this.acquaintance = brief.group().acquaintance();
    this.usedLastTime = brief.wishes().usedLastTime();
    this.purpose = purpose;
  }

  /** In points, zero or more. The brief must allow the exercise. */
  int of(Allowed allowed) {
    Exercise exercise = allowed.exercise();
    int cost = ExchangeRates.EACH + ExchangeRates.suitability(exercise.in(mode).fit());
    if (!purpose.isServedBy(allowed)) {
      cost += ExchangeRates.BESIDE_THE_POINT;
    }
    if (usedLastTime.contains(exercise.id())) {
      cost += ExchangeRates.USED_LAST_TIME;
    }
    return cost + introductions(allowed) + groupsOutOfSight(exercise);
  }

  private int introductions(Allowed allowed) {
    boolean introduces = allowed.yields().contains(INTRODUCTIONS);
    return switch (acquaintance) {
      case STRANGERS ->
          allowed.exercise().kind() == Kind.ICEBREAKER && !introduces
              ? ExchangeRates.NO_INTRODUCTIONS
              : 0;
      case MIXED -> 0;
      case COLLEAGUES -> introduces ? ExchangeRates.NEEDLESS_INTRODUCTIONS : 0;
    };
  }

  private int groupsOutOfSight(Exercise exercise) {
    int groups = exercise.breakout().map(size -> size.groups(people)).orElse(0);
    int outOfSight = Math.max(0, groups - ExchangeRates.GROUPS_IN_SIGHT);
    return Math.min(ExchangeRates.MOST_OUT_OF_SIGHT, outOfSight * ExchangeRates.GROUP_OUT_OF_SIGHT);
  }
}
