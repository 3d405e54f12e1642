package org.arcwright.standin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.Reduction;

/**
 * What an agenda hands on from exercise to exercise, and where it leaves room for a longer one.
 * What is missing already in an agenda that a hand has changed is asked of nobody.
 *
 * @param given products that exist before the start
 * @param links its exercises and own items, in order
 * @param rooms what must not be filled further
 */
record Chain(Set<String> given, List<Link> links, List<Room> rooms) {
  /**
   * One exercise or own item.
   *
   * @param place among the agenda's items
   * @param activity it
   * @param phase number of its phase; -1 if the goal has no such phase
   * @param exercise the catalog's, unless it is an own item
   * @param needs of it that exist
   * @param yields what it leaves
   * @param due what must exist when it is over, for a phase ends with it
   */
  record Link(
      int place,
      Activity activity,
      int phase,
      Optional<Exercise> exercise,
      Set<String> needs,
      Set<String> yields,
      Set<String> due) {}

  /**
   * Minutes that the exercises at some places may take longer, all together.
   *
   * @param first place
   * @param last place
   * @param minutes zero or more
   */
  record Room(int first, int last, int minutes) {
    boolean holds(int place) {
      return first <= place && place <= last;
    }
  }

  /**
   * The chain of an agenda.
   *
   * @param items the agenda's, as the reduction reads them
   */
  static Chain of(Reduction reduction, List<AgendaItem> agenda, List<Item> items) {
    Set<String> given = new HashSet<>(reduction.goal().given());
    given.addAll(reduction.brief().given());
    return new Chain(
        given, links(reduction, agenda, items, given), rooms(reduction.instance(), items));
  }

  private static List<Link> links(
      Reduction reduction, List<AgendaItem> agenda, List<Item> items, Set<String> given) {
    List<Integer> ends = phaseEnds(reduction.goal().arc(), items);
    Set<String> existing = new HashSet<>(given);
    List<Link> links = new ArrayList<>();
    for (int place = 0; place < items.size(); place++) {
      if (!(items.get(place) instanceof Item.Activity item)) {
        continue;
      }
      Optional<Exercise> exercise = reduction.catalog().exercise(item.id());
      Set<String> needs = those(exercise.map(Exercise::needs).orElse(Set.of()), existing);
      Set<String> yields = exercise.map(Exercise::yields).orElse(Set.of());
      existing.addAll(yields);
      Set<String> due = new HashSet<>();
      for (int phase = 0; phase < ends.size(); phase++) {
        if (ends.get(phase) == place) {
          due.addAll(those(reduction.goal().arc().get(phase).yields(), existing));
        }
      }
      links.add(
          new Link(
              place, (Activity) agenda.get(place), item.phase(), exercise, needs, yields, due));
    }
    return links;
  }

  /** For each phase the place of the last exercise in it or in one before; -1 if there is none. */
  private static List<Integer> phaseEnds(List<Phase> arc, List<Item> items) {
    List<Integer> ends = new ArrayList<>();
    for (int phase = 0; phase < arc.size(); phase++) {
      int end = -1;
      for (int place = 0; place < items.size(); place++) {
        if (items.get(place) instanceof Item.Activity activity
            && activity.phase() >= 0
            && activity.phase() <= phase) {
          end = place;
        }
      }
      ends.add(end);
    }
    return ends;
  }

  private static Set<String> those(Set<String> asked, Set<String> existing) {
    Set<String> both = new HashSet<>(asked);
    both.retainAll(existing);
    return both;
  }

  /** The day's end, each stretch, and what starts at a time of its own. */
  private static List<Room> rooms(Instance instance, List<Item> items) {
    List<Room> rooms = new ArrayList<>();
    int last = items.size() - 1;
    rooms.add(room(0, last, instance.cap() - items.get(last).end()));
    int first = 0;
    int minutes = 0;
    int meals = 0;
    for (int place = 0; place <= last; place++) {
      Item item = items.get(place);
      if (item instanceof Item.Activity activity) {
        minutes += item.length();
        for (Instance.Pin pin : instance.pins()) {
          if (pin.id().equals(activity.id())) {
            rooms.add(room(0, place - 1, pin.at() - item.start()));
          }
        }
        continue;
      }
      rooms.add(room(first, place - 1, instance.stretch().max() - minutes));
      first = place + 1;
      minutes = 0;
      if (meals < instance.meals().size() && isMeal(item, instance.meals().get(meals))) {
        rooms.add(room(0, place - 1, instance.meals().get(meals).to() - item.start()));
        meals++;
      }
    }
    rooms.add(room(first, last, instance.stretch().max() - minutes));
    return rooms;
  }

  private static boolean isMeal(Item pause, Instance.Meal meal) {
    return pause.length() == meal.minutes()
        && pause.start() >= meal.from()
        && pause.start() <= meal.to();
  }

  private static Room room(int first, int last, int minutes) {
    return new Room(first, last, Math.max(0, minutes));
  }
}
