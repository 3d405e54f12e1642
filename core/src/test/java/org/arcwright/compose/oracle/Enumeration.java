package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;

/**
 * Solves tiny instances by looking at every list of items. A list is dropped before its end only
 * when all that follow it break the same rule; every list that is left is judged by the checker.
 */
public final class Enumeration {
  /**
   * The cheapest list, and among the cheapest the one of least tie.
   *
   * @param cost in points
   * @param tie sum of hashes
   * @param items in order
   */
  public record Best(long cost, long tie, List<Item> items) {}

  private static final Comparator<Best> ORDER =
      Comparator.comparingLong(Best::cost).thenComparingLong(Best::tie);

  private final Instance instance;
  private final List<Item> items = new ArrayList<>();
  private final Set<String> used = new HashSet<>();
  private final Set<Integer> breaks = new TreeSet<>();
  private final Map<Set<String>, Best> best = new HashMap<>();

  private Enumeration(Instance instance) {
    this.instance = instance;
    if (instance.breakMinutes() > 0) {
      breaks.add(instance.breakMinutes());
    }
    instance.meals().forEach(meal -> breaks.add(meal.minutes()));
  }

  /** The best list of items, or none if nothing fits. Exponential in everything. */
  public static Optional<Best> solve(Instance instance) {
    return best(ofEachSet(instance).values());
  }

  /** The best of some. */
  public static Optional<Best> best(Collection<Best> some) {
    return some.stream().min(ORDER);
  }

  /** The best list of items with each set of exercises, by their ids, as far as any fits. */
  public static Map<Set<String>, Best> ofEachSet(Instance instance) {
    Enumeration enumeration = new Enumeration(instance);
    enumeration.extend(0, 0, 0);
    return Map.copyOf(enumeration.best);
  }

  /** Goes on from the items so far, which end at {@code now}, in each way in turn. */
  private void extend(int now, int phase, int stretch) {
    boolean opening = items.isEmpty();
    int last = opening ? 0 : Math.min(phase + 1, instance.phases().size() - 1);
    for (int next = phase; next <= last; next++) {
      for (Candidate candidate : instance.candidates()) {
        if (instance.phases().get(next).kinds().contains(candidate.kind())
            && used.add(candidate.id())) {
          for (int length : candidate.lengths()) {
            if (now + length <= instance.cap() && stretch + length <= instance.stretch().max()) {
              items.add(new Activity(candidate.id(), next, now, length));
              if (withinMost(next)) {
                judge(next);
                extend(now + length, next, stretch + length);
              }
              items.remove(items.size() - 1);
            }
          }
          used.remove(candidate.id());
        }
      }
    }
    if (!opening && items.get(items.size() - 1) instanceof Activity) {
      for (int length : breaks) {
        items.add(new Pause(now, length));
        extend(now + length, phase, 0);
        items.remove(items.size() - 1);
      }
    }
  }

  /** Whether a phase has no more exercises and minutes than it may. */
  private boolean withinMost(int phase) {
    int count = 0;
    int minutes = 0;
    for (Item item : items) {
      if (item instanceof Activity activity && activity.phase() == phase) {
        count++;
        minutes += activity.length();
      }
    }
    return count <= instance.phases().get(phase).count().max()
        && minutes <= instance.phases().get(phase).minutes().max();
  }

  /** Keeps the items if they fit and are better than the best so far with these exercises. */
  private void judge(int phase) {
    if (phase != instance.phases().size() - 1) {
      return;
    }
    Verdict verdict = Checker.check(instance, items);
    if (verdict.feasible()) {
      Best found = new Best(verdict.cost().total(), verdict.tie(), List.copyOf(items));
      best.merge(Set.copyOf(used), found, BinaryOperator.minBy(ORDER));
    }
  }
}
