package org.arcwright.compose.check;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.arcwright.compose.oracle.Draft;

/** A small sitting in three phases, and a list of items that keeps to it. */
final class Example {
  private Example() {}

  static final Item OBJECTS = new Activity("two-objects", 0, 0, 10);
  static final Item WALK = new Activity("walk-in-twos", 1, 10, 15);
  static final Item BREAK = new Pause(25, 10);
  static final Item NOTES = new Activity("notes-in-twos", 1, 35, 15);
  static final Item CHOICE = new Activity("dot-choice", 2, 50, 15);

  static final List<Item> ITEMS = List.of(OBJECTS, WALK, BREAK, NOTES, CHOICE);

  static Draft draft() {
    return new Draft(5, 80)
        .curve(
            Stream.of(Collections.nCopies(5, 30), Collections.nCopies(11, 24))
                .flatMap(List::stream)
                .toList())
        .stretch(30, 40)
        .breakMinutes(10)
        .bufferPercent(15)
        .products(List.of("introductions", "idea-pool", "decision"))
        .phases(
            List.of(
                phase("open", "ICEBREAKER", 5, 20, 10, "introductions"),
                phase("explore", "DIVERGENT", 15, 40, 25, "idea-pool"),
                phase("decide", "DECISION", 10, 30, 20, "decision")))
        .candidates(
            List.of(
                new Candidate(
                    "two-objects",
                    "ICEBREAKER",
                    List.of(10, 15),
                    List.of(0, 5),
                    40,
                    "PAIRS",
                    List.of(),
                    List.of("introductions"),
                    12),
                new Candidate(
                    "walk-in-twos",
                    "DIVERGENT",
                    List.of(15),
                    List.of(0),
                    35,
                    "PAIRS",
                    List.of("introductions"),
                    List.of(),
                    6),
                new Candidate(
                    "notes-in-twos",
                    "DIVERGENT",
                    List.of(15, 20),
                    List.of(3, 0),
                    20,
                    "PAIRS",
                    List.of(),
                    List.of("idea-pool"),
                    4),
                new Candidate(
                    "dot-choice",
                    "DECISION",
                    List.of(15, 20, 25),
                    List.of(0, 4, 8),
                    30,
                    "PLENARY",
                    List.of("idea-pool"),
                    List.of("decision"),
                    2)))
        .weights(new Weights(1, 10, 60, 30, 5, 20, 2));
  }

  private static Phase phase(
      String name, String kind, int least, int most, int target, String yield) {
    return new Phase(
        name, Set.of(kind), new Bounds(1, 2), new Bounds(least, most), target, List.of(yield));
  }
}
