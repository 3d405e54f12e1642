package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.instance.Instance;

/**
 * Puts a catalog's rules into terms of candidates. A rule on neighbours becomes one pair of sets
 * for each group of exercises that bar the same followers, rather than a list of pairs.
 */
final class HouseRules {
  private final List<Exercise> exercises;
  private final int people;
  private final BooleanSupplier stop;
  private final List<Instance.Apart> apart = new ArrayList<>();
  private final List<Instance.AtMost> atMost = new ArrayList<>();
  private boolean complete = true;

  HouseRules(List<Allowed> allowed, int people, BooleanSupplier stop) {
    this.exercises = allowed.stream().map(Allowed::exercise).toList();
    this.people = people;
    this.stop = stop;
  }

  /** The rules; cut short if the work was stopped. */
  Instance.Rules of(Iterable<Rule> rules) {
    for (Rule rule : rules) {
      if (rule instanceof Rule.Apart<?> neighbours) {
        apart(neighbours);
      } else if (rule instanceof Rule.AtMost most) {
        atMost(most);
      }
    }
    return new Instance.Rules(apart, atMost);
  }

  /** Whether no rule was passed over. */
  boolean complete() {
    return complete;
  }

  private <T> void apart(Rule.Apart<T> rule) {
    Map<T, Set<String>> groups = new LinkedHashMap<>();
    for (Exercise exercise : exercises) {
      groups
          .computeIfAbsent(rule.trait().of(exercise, people), value -> new HashSet<>())
          .add(exercise.id());
    }
    Map<Set<T>, Set<String>> barring = new LinkedHashMap<>();
    for (Map.Entry<T, Set<String>> group : groups.entrySet()) {
      if (stop.getAsBoolean()) {
        complete = false;
        return;
      }
      Set<T> barred = new HashSet<>(groups.keySet());
      barred.removeIf(value -> !rule.never().test(group.getKey(), value));
      if (!barred.isEmpty()) {
        barring.computeIfAbsent(barred, values -> new HashSet<>()).addAll(group.getValue());
      }
    }
    barring.forEach(
        (barred, first) -> {
          Set<String> then = new HashSet<>();
          barred.forEach(value -> then.addAll(groups.getOrDefault(value, Set.of())));
          apart.add(new Instance.Apart(rule.name(), first, then, rule.acrossBreaks()));
        });
  }

  private void atMost(Rule.AtMost rule) {
    Set<String> counted = new HashSet<>();
    for (Exercise exercise : exercises) {
      if (rule.such().test(exercise, people)) {
        counted.add(exercise.id());
      }
    }
    if (counted.size() > rule.most()) {
      atMost.add(new Instance.AtMost(rule.name(), counted, rule.most()));
    }
  }
}
