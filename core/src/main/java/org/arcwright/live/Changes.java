package org.arcwright.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;

/** What sets a new agenda for the day apart from the planned one. */
final class Changes {
  private Changes() {}

  /** Every change to an exercise, in the order of time; what is left out, where it was planned. */
  static List<Change> of(Rest rest, Agenda unchanged, Agenda agenda) {
    Map<String, Activity> now = byId(agenda);
    Map<String, Activity> before = byId(unchanged);
    List<Change> changes = new ArrayList<>();
    rest.running.ifPresent(
        running -> {
          String id = running.activity().exercise();
          Activity next = now.get(id);
          Activity unless = before.get(id);
          if (next != null && unless != null && !next.end().equals(unless.end())) {
            changes.add(new Change.Closed(id, next.title(), next.end()));
          }
        });
    for (Activity planned : rest.planned()) {
      String id = planned.exercise();
      Activity next = now.get(id);
      Activity unless = before.get(id);
      if (next == null) {
        changes.add(new Change.LeftOut(id, planned.title(), planned.length()));
        continue;
      }
      if (unless != null && !next.length().equals(unless.length())) {
        changes.add(new Change.Resized(id, planned.title(), planned.length(), next.length()));
      }
      Integer tied = rest.untied.get(id);
      if (tied != null && tied != next.start().toMinutes()) {
        changes.add(new Change.Moved(id, planned.title(), Duration.ofMinutes(tied), next.start()));
      }
    }
    for (Activity next : agenda.activities()) {
      String id = next.exercise();
      if (!before.containsKey(id) && !rest.done.contains(id)) {
        changes.add(new Change.Added(id, next.title(), next.start(), next.length()));
      }
    }
    Map<String, Integer> order = new HashMap<>();
    now.forEach((id, activity) -> order.put(id, (int) activity.start().toMinutes()));
    before.forEach((id, activity) -> order.putIfAbsent(id, (int) activity.start().toMinutes()));
    changes.sort(Comparator.comparing(change -> order.getOrDefault(change.exercise(), 0)));
    return changes;
  }

  /** Work products that the plan would have left and the new agenda does not. */
  static List<String> lost(Rest rest, Agenda unchanged, Agenda agenda) {
    Set<String> lost = new TreeSet<>();
    unchanged.activities().forEach(each -> lost.addAll(rest.yieldsOf(each.exercise())));
    agenda.activities().forEach(each -> lost.removeAll(rest.yieldsOf(each.exercise())));
    lost.removeAll(rest.products);
    return List.copyOf(lost);
  }

  private static Map<String, Activity> byId(Agenda agenda) {
    Map<String, Activity> byId = new HashMap<>();
    agenda.activities().forEach(activity -> byId.putIfAbsent(activity.exercise(), activity));
    return byId;
  }
}
