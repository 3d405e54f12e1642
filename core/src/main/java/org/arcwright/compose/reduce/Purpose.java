package org.arcwright.compose.reduce;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;

/**
 * Which exercises lead to the goal: those that leave what a phase of their kind must leave, those
 * that leave what exercises of another kind need for this, and those that go on from it in the same
 * phase. Next come those that leave what is of use on any way; criteria are, where there is
 * something to choose. All others may fill their phase and keep people busy, but beside the point.
 */
final class Purpose {
  private final Map<Kind, Set<String>> asked = new EnumMap<>(Kind.class);
  private final Map<Kind, Set<String>> helpful = new EnumMap<>(Kind.class);
  private final Set<String> ofUse = new HashSet<>(Product.ALWAYS_OF_USE);

  /**
   * @param given what exists before the start; nobody needs to leave it
   * @param allowed the exercises that the brief allows
   */
  Purpose(Goal goal, Set<String> given, List<Allowed> allowed) {
    for (Kind kind : Kind.values()) {
      asked.put(kind, new HashSet<>());
      helpful.put(kind, new HashSet<>());
    }
    for (Phase phase : goal.arc()) {
      phase.kinds().forEach(kind -> asked(kind).addAll(phase.yields()));
    }
    asked.values().forEach(products -> products.removeAll(given));
    for (Allowed exercise : allowed) {
      if (isAsked(exercise)) {
        helpful.forEach((kind, products) -> help(exercise, kind, products));
      }
    }
    helpful.values().forEach(products -> products.removeAll(given));
    helpful.values().forEach(products -> products.removeAll(ExchangeRates.OF_ANY_MATTER));
    if (asked.values().stream().noneMatch(some -> contains(ExchangeRates.BY_CRITERIA, some))) {
      ofUse.remove("criteria");
    }
    ofUse.removeAll(given);
  }

  private static void help(Allowed exercise, Kind kind, Set<String> products) {
    if (exercise.exercise().kind() != kind) {
      products.addAll(exercise.needs());
    }
  }

  /** Points for what it adds to the way to the goal, or does not. */
  int price(Allowed exercise) {
    if (leadsThere(exercise)) {
      return 0;
    }
    return contains(ofUse, exercise.yields())
        ? ExchangeRates.NOT_ASKED_FOR
        : ExchangeRates.BESIDE_THE_POINT;
  }

  private boolean leadsThere(Allowed exercise) {
    return isAsked(exercise)
        || contains(helpful.getOrDefault(exercise.exercise().kind(), Set.of()), exercise.yields())
        || goesOn(exercise);
  }

  private boolean goesOn(Allowed exercise) {
    Set<String> products = asked(exercise.exercise().kind());
    for (String need : exercise.needs()) {
      if (ExchangeRates.GOES_ON.contains(need) && products.contains(need)) {
        return true;
      }
    }
    return false;
  }

  private boolean isAsked(Allowed exercise) {
    return contains(asked(exercise.exercise().kind()), exercise.yields());
  }

  private Set<String> asked(Kind kind) {
    return asked.getOrDefault(kind, Set.of());
  }

  private static boolean contains(Set<String> products, Collection<String> some) {
    for (String product : some) {
      if (products.contains(product)) {
        return true;
      }
    }
    return false;
  }
}
