package org.arcwright.cli.handout;

import biweekly.component.VEvent;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;

/** The workshop in a calendar. */
public final class CalendarFile {
  private CalendarFile() {}

  /**
   * The file; none if the agenda has no start.
   *
   * @param items whether each exercise is an event too
   * @param stamp when it is written
   * @param before what the earlier file said, if there is one
   */
  public static Optional<String> of(
      Workshop workshop, boolean items, Instant stamp, Optional<String> before) {
    return workshop.agenda().start().flatMap(start -> write(workshop, start, items, stamp, before));
  }

  private static Optional<String> write(
      Workshop workshop,
      ZonedDateTime start,
      boolean items,
      Instant stamp,
      Optional<String> before) {
    Agenda agenda = workshop.agenda();
    ZonedDateTime end = start.plus(agenda.cap());
    CalendarEvents events = new CalendarEvents(workshop.whose(), stamp, before);
    events.add("", agenda.title(), String.join(", ", workshop.facts()), start, end);
    if (items) {
      for (Activity activity : agenda.activities()) {
        VEvent event =
            events.add(
                activity.exercise(),
                activity.title(),
                workshop.exercise(activity).map(Exercise::purpose).orElse(""),
                start.plus(activity.start()),
                start.plus(activity.end()));
        event.addRelatedTo(events.uid(""));
      }
    }
    return events.write();
  }
}
