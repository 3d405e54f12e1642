package org.arcwright.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.search.Solution;

/**
 * Looks for different agendas, one after another. From each one found, exercises are changed for
 * others of the same length as long as every rule is kept, which costs next to nothing; only where
 * that does not lead to another agenda is there a search, in which exercises that were used have
 * become dear.
 */
final class VarietySearch {
  /** Added to an exercise's cost for each agenda that has it: more than most agendas cost. */
  private static final int USED = 10_000;

  private final Instance instance;
  private final Function<Instance, Solution> solver;
  private final List<Candidate> cheapestFirst;
  private final List<List<Item>> found = new ArrayList<>();
  private final Map<String, Integer> uses = new HashMap<>();

  private VarietySearch(Instance instance, Function<Instance, Solution> solver) {
    this.instance = instance;
    this.solver = solver;
    this.cheapestFirst =
        instance.candidates().stream()
            .sorted(Comparator.comparingInt(Candidate::cost).thenComparing(Candidate::id))
            .toList();
  }

  /** Finds up to {@code most} agendas, 1 or more. */
  static Variety of(Instance instance, int most, Function<Instance, Solution> solver) {
    return new VarietySearch(instance, solver).look(most);
  }

  private Variety look(int most) {
    Solution best = solver.apply(instance);
    boolean counted = best.status() != Solution.Status.STOPPED;
    if (!best.items().isEmpty()) {
      keep(best.items());
    }
    int changed = 0;
    while (found.size() < most && changed < found.size()) {
      Optional<List<Item>> next = changed(found.get(changed));
      if (next.isEmpty() && ++changed == found.size()) {
        Solution another = solver.apply(usedAreDear());
        counted &= another.status() != Solution.Status.STOPPED;
        next = Optional.of(another.items()).filter(this::differs);
      }
      next.ifPresent(this::keep);
    }
    return new Variety(found.stream().map(VarietySearch::exercises).toList(), counted);
  }

  private void keep(List<Item> agenda) {
    found.add(agenda);
    exercises(agenda).forEach(id -> uses.merge(id, 1, Integer::sum));
  }

  /** Another agenda, with unused exercises in the place of as many as can be changed. */
  private Optional<List<Item>> changed(List<Item> agenda) {
    List<Item> items = new ArrayList<>(agenda);
    Set<String> taken = new LinkedHashSet<>(uses.keySet());
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Activity activity) {
        for (Candidate candidate : cheapestFirst) {
          if (mayStandFor(candidate, activity) && !taken.contains(candidate.id())) {
            items.set(
                i,
                new Activity(
                    candidate.id(), activity.phase(), activity.start(), activity.length()));
            if (Checker.check(instance, items).findings().isEmpty()) {
              taken.add(candidate.id());
              break;
            }
            items.set(i, activity);
          }
        }
      }
    }
    return Optional.of(items).filter(this::differs);
  }

  private boolean mayStandFor(Candidate candidate, Activity activity) {
    return candidate.lengths().contains(activity.length())
        && instance.phases().get(activity.phase()).kinds().contains(candidate.kind());
  }

  private boolean differs(List<Item> agenda) {
    List<String> ids = exercises(agenda);
    for (List<Item> before : found) {
      List<String> others = exercises(before);
      long shared = ids.stream().filter(others::contains).count();
      if (2 * shared > Math.min(ids.size(), others.size())) {
        return false;
      }
    }
    return !ids.isEmpty();
  }

  private static List<String> exercises(List<Item> agenda) {
    return agenda.stream()
        .filter(Activity.class::isInstance)
        .map(item -> ((Activity) item).id())
        .toList();
  }

  private Instance usedAreDear() {
    return instance.withCandidates(
        instance.candidates().stream()
            .map(c -> c.withCost(c.cost() + uses.getOrDefault(c.id(), 0) * USED))
            .toList());
  }
}
