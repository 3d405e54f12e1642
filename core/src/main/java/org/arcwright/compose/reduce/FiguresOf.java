package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.arcwright.agenda.FigureCount;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;

/** Counts what can be counted about a list of items, feasible or not. */
public final class FiguresOf {
  private FiguresOf() {}

  /** The figures; exercises that the brief does not allow have no part in cost and energy. */
  public static Figures items(Reduction reduction, List<Item> items) {
    Instance instance = reduction.instance();
    Map<String, Candidate> candidates = new HashMap<>();
    instance.candidates().forEach(candidate -> candidates.put(candidate.id(), candidate));
    FigureCount count = new FigureCount(instance.curve(), Duration.ofMinutes(instance.cap()));
    for (Item item : items) {
      if (item instanceof Item.Activity activity) {
        Candidate candidate = candidates.get(activity.id());
        count.exercise(
            reduction.catalog().exercise(activity.id()).map(Exercise::kind),
            Duration.ofMinutes(activity.start()),
            Duration.ofMinutes(activity.length()),
            candidate == null ? OptionalInt.empty() : OptionalInt.of(candidate.energy()));
      } else {
        count.pause();
      }
    }
    return count.figures(Checker.check(instance, items).cost());
  }

  static int exerciseMinutes(List<Item> items) {
    return items.stream().filter(Item.Activity.class::isInstance).mapToInt(Item::length).sum();
  }
}
