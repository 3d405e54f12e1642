package org.arcwright.agenda;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;

/**
 * One sitting, from the first start to the last end.
 *
 * @param title in words
 * @param goal id of the goal
 * @param mode where people are
 * @param people how many
 * @param cap the time at hand
 * @param start when it starts and in which zone, if that is known
 * @param phases the arc's phases, in order
 * @param items exercises and breaks in order, each starting where the one before ends or later
 * @param buffer kept free at the close
 * @param curve target energy in tenths, at even distances over the cap
 * @param figures what can be counted about it
 */
public record Agenda(
    String title,
    String goal,
    Mode mode,
    int people,
    Duration cap,
    Optional<ZonedDateTime> start,
    List<PhaseTitle> phases,
    List<AgendaItem> items,
    Duration buffer,
    List<Integer> curve,
    Figures figures) {

  /**
   * A phase, as far as an agenda shows it.
   *
   * @param name such as {@code open}
   * @param title for participants, such as "Arrive"
   */
  public record PhaseTitle(String name, String title) {}

  /** Refuses an empty agenda and items that overlap or are out of order. */
  public Agenda {
    title = Checks.text("title", title, 120);
    Checks.id("goal", goal);
    Checks.range("people", people, 1, 1000);
    phases = List.copyOf(phases);
    items = List.copyOf(items);
    curve = List.copyOf(curve);
    if (items.isEmpty()) {
      throw new InvalidValueException("items", "empty", "an agenda has at least one item");
    }
    for (int i = 1; i < items.size(); i++) {
      if (items.get(i).start().compareTo(items.get(i - 1).end()) < 0) {
        throw new InvalidValueException(
            "items[" + i + "].start",
            items.get(i).start().toMinutes(),
            "the item before ends at " + items.get(i - 1).end().toMinutes() + "; start no earlier");
      }
    }
  }

  /** The same agenda at another time. */
  public Agenda startingAt(ZonedDateTime time) {
    return new Agenda(
        title, goal, mode, people, cap, Optional.of(time), phases, items, buffer, curve, figures);
  }

  /** The exercises and own items, in order. */
  public List<Activity> activities() {
    return items.stream().filter(Activity.class::isInstance).map(Activity.class::cast).toList();
  }

  /** End of the last item, before the buffer. */
  public Duration end() {
    return items.get(items.size() - 1).end();
  }
}
