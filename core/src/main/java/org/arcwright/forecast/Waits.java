package org.arcwright.forecast;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.brief.Brief;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;

/**
 * Which items wait for a time of their own even when everything before them was quicker: a guest
 * who comes at half past ten, a meal that is served at noon, and whatever an agenda puts later than
 * the end of the item before.
 */
final class Waits {
  private Waits() {}

  /** For each item the minute before which it does not begin. */
  static List<Integer> of(Agenda agenda, Optional<Brief> brief) {
    Map<String, Duration> fixed = brief.map(Waits::fixed).orElse(Map.of());
    List<Integer> waits = new ArrayList<>();
    Duration free = Duration.ZERO;
    int meals = 0;
    for (AgendaItem item : agenda.items()) {
      Duration wait = item.start().compareTo(free) > 0 ? item.start() : Duration.ZERO;
      if (item instanceof Activity activity) {
        wait = later(wait, fixed.getOrDefault(activity.exercise(), Duration.ZERO));
      } else if (item instanceof Pause pause && pause.meal()) {
        wait = later(wait, mealTime(brief, meals));
        meals++;
      }
      waits.add((int) wait.toMinutes());
      free = item.end();
    }
    return waits;
  }

  private static Map<String, Duration> fixed(Brief brief) {
    Map<String, Duration> fixed = new HashMap<>();
    for (Wishes.Pin pin : brief.wishes().pins()) {
      fixed.put(pin.exercise(), brief.offset(pin.at()));
    }
    for (OwnItem item : brief.ownItems()) {
      item.at().ifPresent(at -> fixed.put(item.id(), brief.offset(at)));
    }
    return fixed;
  }

  private static Duration mealTime(Optional<Brief> brief, int meal) {
    return brief
        .filter(known -> meal < known.meals().size())
        .map(known -> known.meals().get(meal).earliest())
        .orElse(Duration.ZERO);
  }

  private static Duration later(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? other : one;
  }
}
