package org.arcwright.compose.reduce;

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
 * that leave what these need, and those that leave what is of use on any way. All others may fill
 * their phase and keep people busy, but beside the point.
 */
final class Purpose {
  private final Map<Kind, Set<String>> asked = new EnumMap<>(Kind.class);
  private final Set<String> helpful = new HashSet<>(Product.ALWAYS_OF_USE);

  /**
   * @param given what exists before the start; nobody needs to leave it
   * @param allowed the exercises that the brief allows
   */
  Purpose(Goal goal, Set<String> given, List<Allowed> allowed) {
    for (Phase phase : goal.arc()) {
      for (Kind kind : phase.kinds()) {
        asked.computeIfAbsent(kind, k -> new HashSet<>()).addAll(phase.yields());
      }
    }
    asked.values().forEach(products -> products.removeAll(given));
    for (Allowed exercise : allowed) {
      if (isAsked(exercise)) {
        helpful.addAll(exercise.needs());
      }
    }
    helpful.removeAll(given);
    helpful.removeAll(ExchangeRates.OF_ANY_MATTER);
  }

  /** Whether it leads to the goal. */
  boolean isServedBy(Allowed exercise) {
    return isAsked(exercise) || contains(helpful, exercise);
  }

  private boolean isAsked(Allowed exercise) {
    return contains(asked.getOrDefault(exercise.exercise().kind(), Set.of()), exercise);
  }

  private static boolean contains(Set<String> products, Allowed exercise) {
    for (String product : exercise.yields()) {
      if (products.contains(product)) {
        return true;
      }
    }
    return false;
  }
}
