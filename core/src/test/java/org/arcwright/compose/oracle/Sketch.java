package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;

/**
 * Some list of items that fits, drawn at random phase by phase, taking breaks and meals as they
 * fall due. It is far from the best, and a try may fail; it shows that an instance has an answer
 * and gives wishes something to aim at.
 */
public final class Sketch {
  private static final int DRAWS = 60;

  private final Instance instance;
  private final SplittableRandom random;
  private final Map<String, List<Candidate>> byKind;
  private final List<Item> items = new ArrayList<>();
  private final Set<String> used = new HashSet<>();
  private final Set<String> products;
  private int now;
  private int stretch;
  private int mealsTaken;

  private Sketch(Instance instance, SplittableRandom random, Map<String, List<Candidate>> byKind) {
    this.instance = instance;
    this.random = random;
    this.byKind = byKind;
    this.products = new HashSet<>(instance.initial());
  }

  /** A list that the checker accepts, if one is drawn in so many tries. */
  public static Optional<List<Item>> draw(Instance instance, int tries, SplittableRandom random) {
    Map<String, List<Candidate>> byKind = new HashMap<>();
    for (Candidate candidate : instance.candidates()) {
      byKind.computeIfAbsent(candidate.kind(), kind -> new ArrayList<>()).add(candidate);
    }
    for (int i = 0; i < tries; i++) {
      Sketch sketch = new Sketch(instance, random, byKind);
      if (sketch.fill() && Checker.check(instance, sketch.items).feasible()) {
        return Optional.of(List.copyOf(sketch.items));
      }
    }
    return Optional.empty();
  }

  private boolean fill() {
    for (int number = 0; number < instance.phases().size(); number++) {
      Phase phase = instance.phases().get(number);
      int least = phase.minutes().min();
      int goal = least >= phase.target() ? least : random.nextInt(least, phase.target());
      int count = 0;
      int minutes = 0;
      while (count < phase.count().min()
          || minutes < goal
          || !products.containsAll(phase.yields())) {
        int left = phase.minutes().max() - minutes;
        Optional<Activity> next =
            count == phase.count().max() ? Optional.empty() : place(phase, number, left);
        if (next.isEmpty()) {
          break; // the checker will say whether that much is enough
        }
        count++;
        minutes += next.get().length();
      }
    }
    return mealsTaken == instance.meals().size();
  }

  /** Draws an exercise of at most so many minutes, and takes the break that is due before it. */
  private Optional<Activity> place(Phase phase, int number, int most) {
    List<String> kinds = phase.kinds().stream().sorted().filter(byKind::containsKey).toList();
    for (int draw = 0; draw < DRAWS && !kinds.isEmpty(); draw++) {
      List<Candidate> some = byKind.get(kinds.get(random.nextInt(kinds.size())));
      Candidate candidate = some.get(random.nextInt(some.size()));
      int length = candidate.lengths().get(random.nextInt(candidate.lengths().size()));
      if (length <= most
          && !used.contains(candidate.id())
          && products.containsAll(candidate.needs())
          && rest(length)) {
        Activity activity = new Activity(candidate.id(), number, now, length);
        items.add(activity);
        used.add(candidate.id());
        products.addAll(candidate.yields());
        now += length;
        stretch += length;
        return Optional.of(activity);
      }
    }
    return Optional.empty();
  }

  /** Takes a break if an exercise of this length cannot come before one; false if none will do. */
  private boolean rest(int length) {
    if (mealsTaken < instance.meals().size() && stretch > 0) {
      Meal meal = instance.meals().get(mealsTaken);
      if (now >= meal.from() && now <= meal.to() && now + length > meal.to()) {
        mealsTaken++;
        pause(meal.minutes());
        return true;
      }
    }
    if (stretch + length > instance.stretch().max()) {
      if (instance.breakMinutes() == 0) {
        return false;
      }
      pause(instance.breakMinutes());
    }
    return true;
  }

  private void pause(int minutes) {
    items.add(new Pause(now, minutes));
    now += minutes;
    stretch = 0;
  }
}
