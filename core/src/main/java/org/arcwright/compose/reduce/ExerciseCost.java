package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.List;
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
  private final String works;
  private final String withEffort;

  ExerciseCost(Brief brief, Purpose purpose) {
    this.people = brief.group().count();
    this.mode = brief.mode();
    this.acquaintance = brief.group().acquaintance();
    this.usedLastTime = brief.wishes().usedLastTime();
    this.purpose = purpose;
    this.works = "good " + Admission.where(mode) + ", but better elsewhere";
    this.withEffort = "possible " + Admission.where(mode) + ", but with effort";
  }

  /** In points, zero or more. The brief must allow the exercise. */
  int of(Allowed allowed) {
    Sum sum = new Sum();
    tally(allowed, sum);
    return sum.points;
  }

  /** The same part by part, each over zero and with its cause in words. */
  List<CostPart> parts(Allowed allowed) {
    List<CostPart> parts = new ArrayList<>();
    tally(
        allowed,
        (points, why) -> {
          if (points > 0) {
            parts.add(new CostPart(why, points));
          }
        });
    return parts;
  }

  private interface Tally {
    void add(int points, String why);
  }

  private static final class Sum implements Tally {
    private int points;

    @Override
    public void add(int more, String why) {
      points += more;
    }
  }

  private void tally(Allowed allowed, Tally tally) {
    Exercise exercise = allowed.exercise();
    int fit = exercise.in(mode).fit();
    tally.add(ExchangeRates.EACH, "each exercise has to be explained");
    tally.add(ExchangeRates.suitability(fit), fit == 2 ? works : withEffort);
    int price = purpose.price(allowed);
    tally.add(
        price,
        price == ExchangeRates.NOT_ASKED_FOR
            ? "of some use, but nothing in the goal asks for it"
            : "beside the point of the goal");
    if (usedLastTime.contains(exercise.id())) {
      tally.add(ExchangeRates.USED_LAST_TIME, "used last time");
    }
    tally.add(
        introductions(allowed),
        acquaintance == Acquaintance.STRANGERS
            ? "a warm-up that leaves strangers strangers"
            : "introductions among people who know each other");
    tally.add(groupsOutOfSight(exercise), "more small groups than can be looked after");
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
