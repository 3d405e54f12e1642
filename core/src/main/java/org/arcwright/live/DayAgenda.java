package org.arcwright.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;

/** Draws up the whole day: what is over at its real times, then what was found for the rest. */
final class DayAgenda {
  private final Rest rest;
  private final List<AgendaItem> items = new ArrayList<>();
  private final Set<Instance.Meal> eaten = new HashSet<>();

  private DayAgenda(Rest rest) {
    this.rest = rest;
  }

  /** The agenda; times in {@code found} count from the instance's beginning. */
  static Agenda of(Rest rest, List<String> phases, List<Item> found) {
    DayAgenda day = new DayAgenda(rest);
    rest.stand.past().forEach(day::past);
    found.forEach(item -> day.ahead(item, phases));
    return day.agenda();
  }

  private Duration free() {
    return items.isEmpty() ? Duration.ZERO : items.get(items.size() - 1).end();
  }

  /** Times are cut to whole minutes; what did not last that long is passed over. */
  private void past(Stand.Past past) {
    if (past.end().isEmpty() && !past.isBreak()) {
      return;
    }
    Duration start = later(minutes(past.start()), free());
    Duration over = past.end().orElseGet(() -> Duration.ofMinutes(Math.max(rest.from, rest.now)));
    Duration length = minutes(over).minus(start);
    if (length.isZero() || length.isNegative()) {
      return;
    }
    if (past.isBreak()) {
      items.add(new Pause(start, length, isMeal(past)));
    } else {
      items.add(rest.activity(past.item(), start, Optional.of(length)));
    }
  }

  private boolean isMeal(Stand.Past past) {
    List<Instance.Meal> meals = rest.base.instance().meals();
    return rest.mealOf(past).filter(number -> eaten.add(meals.get(number - 1))).isPresent();
  }

  private void ahead(Item item, List<String> phases) {
    int origin = RestInstance.origin(rest);
    Duration start = Duration.ofMinutes(origin + item.start());
    Duration length = Duration.ofMinutes(item.length());
    if (item instanceof Item.Pause) {
      items.add(new Pause(start, length, isMeal(item)));
      return;
    }
    Item.Activity activity = (Item.Activity) item;
    if (activity.id().equals(RestCandidates.SO_FAR)) {
      return;
    }
    if (rest.isRunning(activity.id())) {
      Duration began = later(Duration.ofMinutes(rest.running.orElseThrow().began()), free());
      length = start.plus(length).minus(began);
      items.add(rest.activity(activity.id(), began, Optional.of(length)));
      return;
    }
    String phase = phases.get(activity.phase());
    AgendaItem.Activity known = rest.activity(activity.id(), start, Optional.of(length));
    items.add(
        new AgendaItem.Activity(
            known.exercise(),
            known.title(),
            known.kind(),
            phase,
            start,
            length,
            known.format(),
            known.energy()));
  }

  private boolean isMeal(Item pause) {
    int start = RestInstance.origin(rest) + pause.start();
    for (Instance.Meal meal : rest.meals) {
      if (start >= meal.from() && pause.length() == meal.minutes() && eaten.add(meal)) {
        return true;
      }
    }
    return false;
  }

  private Agenda agenda() {
    Brief brief = rest.base.brief();
    Agenda plan = rest.agenda;
    Duration end = rest.stand.end();
    Duration free = end.minus(free());
    int cells = Math.max(1, rest.end / rest.grid);
    long whole = 2L * brief.cap().toMinutes();
    List<Integer> curve = new ArrayList<>();
    for (int cell = 0; cell < cells; cell++) {
      long part = Math.min(whole, (2L * cell + 1) * rest.end / cells);
      curve.add(brief.curve().at(part, whole));
    }
    return new Agenda(
        plan.title(),
        plan.goal(),
        plan.mode(),
        plan.people(),
        end,
        plan.start(),
        rest.base.goal().arc().stream()
            .map(phase -> new Agenda.PhaseTitle(phase.name(), phase.title()))
            .toList(),
        items,
        free.isNegative() ? Duration.ZERO : free,
        curve,
        Figures.of(items, curve, end));
  }

  private static Duration minutes(Duration time) {
    return Duration.ofMinutes(time.toMinutes());
  }

  private static Duration later(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? other : one;
  }
}
