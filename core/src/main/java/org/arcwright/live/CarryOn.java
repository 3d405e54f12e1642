package org.arcwright.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;

/**
 * What follows if nothing changes: everything in its order and at its length, as soon as what runs
 * is over, but nothing before the time that it is tied to.
 *
 * @param agenda the whole day
 * @param keeps whether that keeps every rule: breaks in time, pins, an end in time
 * @param cost in points, as far as it keeps the rules
 */
record CarryOn(Agenda agenda, boolean keeps, long cost) {
  static CarryOn of(Rest rest) {
    List<Item> items = new ArrayList<>();
    List<String> phases = new ArrayList<>();
    rest.base.instance().phases().forEach(phase -> phases.add(phase.name()));
    int origin = RestInstance.origin(rest);
    if (rest.worked > 0) {
      items.add(new Item.Activity(RestCandidates.SO_FAR, rest.phase, 0, rest.worked));
    }
    rest.running.ifPresent(
        running ->
            items.add(
                new Item.Activity(
                    running.activity().exercise(),
                    rest.phase,
                    rest.worked,
                    running.natural() - rest.from)));
    int meals = 0;
    for (AgendaItem item : rest.ahead) {
      int free = items.isEmpty() ? 0 : items.get(items.size() - 1).end();
      if (item instanceof Pause pause && !items.isEmpty()) {
        int earliest = free;
        if (pause.meal() && meals < rest.meals.size()) {
          earliest = Math.max(free, rest.meals.get(meals++).from() - origin);
        }
        items.add(new Item.Pause(earliest, (int) pause.length().toMinutes()));
      } else if (item instanceof Activity activity && rest.planned().contains(activity)) {
        int tied = rest.tied.getOrDefault(activity.exercise(), origin) - origin;
        int phase = Math.max(rest.phase, rest.phaseNumber(activity.phase()));
        int start = Math.max(free, tied);
        items.add(new Item.Activity(activity.exercise(), phase, start, rest.planned(activity)));
      }
    }
    Agenda agenda = DayAgenda.of(rest, phases, items);
    Optional<Instance> instance =
        RestInstance.of(rest, Recipe.of(rest.planned(), Recipe.PLANNED, 0));
    List<Item> numbered = instance.map(i -> numbered(items, phases, i)).orElse(items);
    boolean keeps = instance.filter(i -> Checker.check(i, numbered).feasible()).isPresent();
    long cost = instance.map(i -> Checker.check(i, numbered).cost().total()).orElse(0L);
    return new CarryOn(agenda, keeps, cost);
  }

  /** The items with their phases' numbers in an instance, which has only those still to come. */
  private static List<Item> numbered(List<Item> items, List<String> arc, Instance instance) {
    List<String> names = instance.phases().stream().map(Instance.Phase::name).toList();
    List<Item> numbered = new ArrayList<>();
    for (Item item : items) {
      numbered.add(
          item instanceof Item.Activity activity
              ? new Item.Activity(
                  activity.id(),
                  names.indexOf(arc.get(activity.phase())),
                  activity.start(),
                  activity.length())
              : item);
    }
    return numbered;
  }
}
