package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.brief.Brief;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;

/** Turns the items of a solution into the agenda that a person reads. */
public final class AgendaBuilder {
  private final Reduction reduction;
  private final Instance instance;
  private final Brief brief;

  private AgendaBuilder(Reduction reduction) {
    this.reduction = reduction;
    this.instance = reduction.instance();
    this.brief = reduction.brief();
  }

  /**
   * Builds the agenda.
   *
   * @throws InvalidValueException if an item names neither an exercise of the catalog nor an own
   *     item of the brief, or a phase that the goal does not have
   */
  public static Agenda build(Reduction reduction, List<Item> items) {
    return new AgendaBuilder(reduction).build(items);
  }

  private Agenda build(List<Item> items) {
    return new Agenda(
        brief.title(),
        brief.goal(),
        brief.mode(),
        brief.group().count(),
        brief.cap(),
        brief.start(),
        reduction.goal().arc().stream()
            .map(phase -> new Agenda.PhaseTitle(phase.name(), phase.title()))
            .toList(),
        agendaItems(items),
        Duration.ofMinutes(instance.buffer(FiguresOf.exerciseMinutes(items))),
        instance.curve(),
        FiguresOf.items(reduction, items));
  }

  private List<AgendaItem> agendaItems(List<Item> items) {
    Iterator<Instance.Meal> meals = instance.meals().iterator();
    Optional<Instance.Meal> next = next(meals);
    List<AgendaItem> read = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Activity activity) {
        read.add(activity(activity));
        continue;
      }
      boolean meal = next.filter(due -> isMeal(item, due)).isPresent();
      if (meal) {
        next = next(meals);
      }
      read.add(
          new AgendaItem.Pause(
              Duration.ofMinutes(item.start()), Duration.ofMinutes(item.length()), meal));
    }
    return read;
  }

  /** Meals come in order, so the first break that can be the next meal is it. */
  private static boolean isMeal(Item pause, Instance.Meal meal) {
    return pause.length() == meal.minutes()
        && pause.start() >= meal.from()
        && pause.start() <= meal.to();
  }

  private static Optional<Instance.Meal> next(Iterator<Instance.Meal> meals) {
    return meals.hasNext() ? Optional.of(meals.next()) : Optional.empty();
  }

  private AgendaItem.Activity activity(Item.Activity activity) {
    List<Phase> arc = reduction.goal().arc();
    if (activity.phase() < 0 || activity.phase() >= arc.size()) {
      throw new InvalidValueException(
          "phase", activity.phase(), "the arc's phases are numbered 0 to " + (arc.size() - 1));
    }
    String phase = arc.get(activity.phase()).name();
    Duration start = Duration.ofMinutes(activity.start());
    Duration length = Duration.ofMinutes(activity.length());
    Optional<Exercise> exercise = reduction.catalog().exercise(activity.id());
    if (exercise.isPresent()) {
      return exercise(exercise.get(), phase, start, length);
    }
    OwnItem own = ownItem(activity.id());
    return new AgendaItem.Activity(
        own.id(),
        own.title(),
        Optional.empty(),
        phase,
        start,
        length,
        own.format(),
        10 * own.energy());
  }

  private AgendaItem.Activity exercise(
      Exercise exercise, String phase, Duration start, Duration length) {
    return new AgendaItem.Activity(
        exercise.id(),
        exercise.title(),
        Optional.of(exercise.kind()),
        phase,
        start,
        length,
        exercise.format(brief.group().count()),
        10 * exercise.energy());
  }

  private OwnItem ownItem(String id) {
    return brief.ownItems().stream()
        .filter(item -> item.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidValueException(
                    "exercise", id, "neither the catalog nor the brief has it"));
  }
}
