package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;

/** Counts what can be counted about a list of items, feasible or not. */
public final class FiguresOf {
  /** Tenths between the calmest and the liveliest. */
  private static final int WIDEST = 40;

  private FiguresOf() {}

  /** The figures; exercises that the brief does not allow have no part in cost and energy. */
  public static Figures items(Reduction reduction, List<Item> items) {
    return new Figures(
        minutesByKind(reduction, items),
        energyFit(reduction.instance(), items),
        Duration.ofMinutes(longestStretch(items)),
        Checker.check(reduction.instance(), items).cost());
  }

  static int exerciseMinutes(List<Item> items) {
    return items.stream().filter(Item.Activity.class::isInstance).mapToInt(Item::length).sum();
  }

  private static Map<Kind, Duration> minutesByKind(Reduction reduction, List<Item> items) {
    Map<Kind, Duration> minutes = new EnumMap<>(Kind.class);
    for (Item item : items) {
      if (item instanceof Item.Activity activity) {
        reduction
            .catalog()
            .exercise(activity.id())
            .map(Exercise::kind)
            .ifPresent(
                kind -> minutes.merge(kind, Duration.ofMinutes(activity.length()), Duration::plus));
      }
    }
    return minutes;
  }

  private static int energyFit(Instance instance, List<Item> items) {
    Map<String, Candidate> candidates = new HashMap<>();
    instance.candidates().forEach(candidate -> candidates.put(candidate.id(), candidate));
    long off = 0;
    long minutes = 0;
    for (Item item : items) {
      if (item instanceof Item.Activity activity && candidates.containsKey(activity.id())) {
        int energy = candidates.get(activity.id()).energy();
        for (int minute = item.start(); minute < Math.min(item.end(), instance.cap()); minute++) {
          off += Math.abs(energy - instance.curve().get(minute / instance.grid()));
          minutes++;
        }
      }
    }
    return minutes == 0 ? 100 : (int) Math.round(100 - 100.0 * off / (WIDEST * minutes));
  }

  private static int longestStretch(List<Item> items) {
    int longest = 0;
    int stretch = 0;
    for (Item item : items) {
      stretch = item instanceof Item.Activity ? stretch + item.length() : 0;
      longest = Math.max(longest, stretch);
    }
    return longest;
  }
}
