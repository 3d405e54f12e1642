package org.arcwright.compose.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;

/**
 * A list of items laid beside its instance. Ends and sums are longs, since a list may hold any
 * numbers.
 */
record Sheet(
    Instance instance,
    List<Item> items,
    List<Activity> activities,
    Map<String, Candidate> candidates) {

  static Sheet of(Instance instance, List<Item> items) {
    Map<String, Candidate> candidates = new HashMap<>();
    instance.candidates().forEach(candidate -> candidates.put(candidate.id(), candidate));
    List<Activity> activities =
        items.stream().filter(Activity.class::isInstance).map(Activity.class::cast).toList();
    return new Sheet(instance, List.copyOf(items), activities, candidates);
  }

  /** The candidate that an activity names, if there is one. */
  Optional<Candidate> candidate(Activity activity) {
    return Optional.ofNullable(candidates.get(activity.id()));
  }

  /** Whether an activity's phase exists. */
  boolean inPhase(Activity activity) {
    return activity.phase() >= 0 && activity.phase() < instance.phases().size();
  }

  long exerciseMinutes() {
    return activities.stream().mapToLong(Activity::length).sum();
  }

  long breakMinutes() {
    return items.stream().filter(Pause.class::isInstance).mapToLong(Item::length).sum();
  }

  /** grid × ceil(exercise minutes × percent / (100 × grid)). */
  long buffer() {
    long cell = 100L * instance.grid();
    long percent = exerciseMinutes() * instance.bufferPercent();
    return instance.grid() * -Math.floorDiv(-percent, cell);
  }

  /** When an item ends. */
  static long end(Item item) {
    return (long) item.start() + item.length();
  }
}
