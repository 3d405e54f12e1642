package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Pin;

/**
 * The sponsor's own items. Each is a candidate of a kind of its own, allowed in its phase, or in
 * any phase if the brief names none; phases grow by it, so that the arc's own exercises stay.
 */
final class OwnItems {
  private final Map<String, OwnItem> items = new TreeMap<>();
  private final Goal goal;
  private final Timing timing;

  /**
   * @throws InvalidValueException if an item names a phase that the goal does not have, or shares
   *     its id with an exercise
   */
  OwnItems(List<OwnItem> items, Goal goal, Catalog catalog, Timing timing) {
    this.goal = goal;
    this.timing = timing;
    Set<String> phases = goal.arc().stream().map(Phase::name).collect(Collectors.toSet());
    for (OwnItem item : items) {
      if (catalog.exercise(item.id()).isPresent()) {
        throw new InvalidValueException(
            "own-items", item.id(), "the catalog has an exercise of that id; choose another");
      }
      item.phase()
          .filter(phase -> !phases.contains(phase))
          .ifPresent(
              phase -> {
                throw Known.unknown("own-items.phase", phase, phases, "phase in this goal's arc");
              });
      this.items.put(item.id(), item);
    }
  }

  /** Their ids, in order. */
  Set<String> ids() {
    return items.keySet();
  }

  /** Their minutes together. */
  int minutes() {
    return items.values().stream().mapToInt(OwnItems::minutes).sum();
  }

  /** The items that fit into a stretch, as candidates that cost nothing. */
  List<Candidate> candidates() {
    return items.values().stream()
        .filter(item -> minutes(item) <= timing.stretch().max())
        .map(
            item ->
                new Candidate(
                    item.id(),
                    kind(item),
                    List.of(minutes(item)),
                    List.of(0),
                    10 * item.energy(),
                    item.format().word(),
                    List.of(),
                    List.of(),
                    0))
        .toList();
  }

  /** The items that are longer than a stretch, each with the reason. */
  Map<String, Refusal> tooLong() {
    Map<String, Refusal> tooLong = new TreeMap<>();
    for (OwnItem item : items.values()) {
      if (minutes(item) > timing.stretch().max()) {
        tooLong.put(item.id(), Reducer.overTheStretch("too long: takes", minutes(item), timing));
      }
    }
    return tooLong;
  }

  /**
   * What a phase must leave room for.
   *
   * @param kinds of the items that may stand in it
   * @param minutes of these
   * @param certain how many of them must stand in it
   * @param certainMinutes of these
   * @param expectedMinutes of those that probably will
   */
  record Room(
      Set<String> kinds, int minutes, int certain, int certainMinutes, int expectedMinutes) {}

  /**
   * The room to leave in the phase of that number.
   *
   * @param ends where each phase should end, in minutes from the start
   */
  Room room(int phase, List<Integer> ends) {
    String name = goal.arc().get(phase).name();
    List<OwnItem> certain = new ArrayList<>();
    List<OwnItem> possible = new ArrayList<>();
    int expected = 0;
    for (OwnItem item : items.values()) {
      if (item.phase().isEmpty()) {
        possible.add(item);
        expected += expectedPhase(item, ends) == phase ? minutes(item) : 0;
      } else if (item.phase().equals(Optional.of(name))) {
        certain.add(item);
        possible.add(item);
        expected += minutes(item);
      }
    }
    Set<String> kinds = new HashSet<>();
    possible.forEach(item -> kinds.add(kind(item)));
    return new Room(kinds, sum(possible), certain.size(), sum(certain), expected);
  }

  /** The phase that should be running at its time; without a time, the middle one. */
  private int expectedPhase(OwnItem item, List<Integer> ends) {
    int at =
        timing.pins().stream()
            .filter(pin -> pin.id().equals(item.id()))
            .mapToInt(Pin::at)
            .findFirst()
            .orElse(timing.cap() / 2);
    int phase = 0;
    while (phase < ends.size() - 1 && at >= ends.get(phase)) {
      phase++;
    }
    return phase;
  }

  private static int sum(List<OwnItem> items) {
    return items.stream().mapToInt(OwnItems::minutes).sum();
  }

  private static String kind(OwnItem item) {
    return "own item " + item.id();
  }

  private static int minutes(OwnItem item) {
    Duration length = item.length();
    return (int) length.toMinutes();
  }
}
