package org.arcwright.standin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.AgendaReader;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.standin.Chain.Link;

/**
 * What may stand in at a place of an agenda: the exercises that the brief allows in its phase and
 * that the agenda does not have, each with the length nearest to what it stands in for, the shorter
 * of two, and at the price by which the agenda becomes dearer. Exercises that the catalog has a
 * rule about are not among them, for such a rule may hold beside one stand-in and not beside
 * another.
 */
final class Candidates {
  private final Reduction reduction;
  private final List<Item> items;
  private final Set<String> excluded = new HashSet<>();
  private final long price;

  Candidates(Reduction reduction, Agenda agenda) {
    this.reduction = reduction;
    this.items = AgendaReader.items(reduction, agenda);
    agenda.activities().forEach(activity -> excluded.add(activity.exercise()));
    Instance.Rules rules = reduction.instance().rules();
    for (Instance.Apart apart : rules.apart()) {
      excluded.addAll(apart.first());
      excluded.addAll(apart.then());
    }
    rules.atMost().forEach(atMost -> excluded.addAll(atMost.of()));
    this.price = price(items);
  }

  /**
   * Those for a place. Linear in the catalog, times the items and the cells of a day.
   *
   * @param usable what else is asked of them
   */
  List<Option> at(Link link, Predicate<Exercise> usable) {
    List<Option> options = new ArrayList<>();
    for (Candidate candidate : reduction.instance().candidates()) {
      Optional<Exercise> exercise = reduction.catalog().exercise(candidate.id());
      if (exercise.filter(usable).isPresent()
          && !excluded.contains(candidate.id())
          && mayStand(candidate, exercise.get(), link)) {
        options.add(option(link, candidate, exercise.get()));
      }
    }
    return options;
  }

  private boolean mayStand(Candidate candidate, Exercise exercise, Link link) {
    return link.phase() >= 0
        ? reduction.instance().phases().get(link.phase()).kinds().contains(candidate.kind())
        : link.activity().kind().equals(Optional.of(exercise.kind()));
  }

  private Option option(Link link, Candidate candidate, Exercise exercise) {
    int planned = items.get(link.place()).length();
    int length = nearest(candidate.lengths(), planned);
    long dearer = price(swapped(link.place(), candidate.id(), length)) - price;
    return Option.of(exercise, link.yields(), length, length - planned, dearer);
  }

  private static int nearest(List<Integer> lengths, int planned) {
    int best = lengths.get(0);
    for (int length : lengths) {
      if (Math.abs(length - planned) < Math.abs(best - planned)) {
        best = length;
      }
    }
    return best;
  }

  /** The items with another exercise at a place; all after it begin earlier or later. */
  private List<Item> swapped(int place, String id, int length) {
    List<Item> swapped = new ArrayList<>(items.subList(0, place));
    Item.Activity old = (Item.Activity) items.get(place);
    swapped.add(new Item.Activity(id, old.phase(), old.start(), length));
    int later = length - old.length();
    for (Item item : items.subList(place + 1, items.size())) {
      int start = item.start() + later;
      swapped.add(
          item instanceof Item.Activity activity
              ? new Item.Activity(activity.id(), activity.phase(), start, item.length())
              : new Item.Pause(start, item.length()));
    }
    return swapped;
  }

  /** As the composer prices it; a minute taken from the buffer costs as much as one left over. */
  private long price(List<Item> day) {
    Instance instance = reduction.instance();
    int work = day.stream().filter(Item.Activity.class::isInstance).mapToInt(Item::length).sum();
    int over = day.get(day.size() - 1).end() + instance.buffer(work) - instance.cap();
    return Checker.check(instance, day).cost().total()
        + (long) instance.weights().idle() * Math.max(0, over);
  }
}
