package org.arcwright.cli.document;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;

/** A small agenda that can be drawn by hand. */
final class Samples {
  private Samples() {}

  /** An hour and twenty minutes: a column of the picture is two minutes at a width of 50. */
  static Agenda agenda() {
    List<AgendaItem> items = new ArrayList<>();
    items.add(activity("one", Kind.ICEBREAKER, 0, 10, 30));
    items.add(activity("two", Kind.DIVERGENT, 10, 20, 40));
    items.add(new Pause(Duration.ofMinutes(30), Duration.ofMinutes(10), false));
    items.add(activity("three", Kind.DECISION, 40, 20, 20));
    items.add(activity("four", Kind.REFLECTION, 60, 10, 10));
    return new Agenda(
        "A sample",
        "choose-a-direction",
        Mode.REMOTE,
        8,
        Duration.ofMinutes(80),
        Optional.<ZonedDateTime>empty(),
        List.of(new Agenda.PhaseTitle("all", "All of it")),
        items,
        Duration.ofMinutes(10),
        List.of(30, 40, 30, 20),
        Figures.of(items, List.of(30, 40, 30, 20), Duration.ofMinutes(80)));
  }

  private static Activity activity(String id, Kind kind, int start, int length, int energy) {
    return new Activity(
        id,
        id,
        Optional.of(kind),
        "all",
        Duration.ofMinutes(start),
        Duration.ofMinutes(length),
        Format.PLENARY,
        energy);
  }
}
