package org.arcwright.cli.handout;

import static java.nio.charset.StandardCharsets.UTF_8;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.TimezoneAssignment;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.UUID;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;

/**
 * The workshop in a calendar (RFC 5545). An event keeps its UID whatever becomes of its time or its
 * title's place, and its SEQUENCE grows whenever it is not what the earlier file said.
 */
public final class CalendarFile {
  private final Workshop workshop;
  private final Agenda agenda;
  private final ZonedDateTime start;
  private final Instant stamp;
  private final Map<String, VEvent> earlier = new HashMap<>();

  private CalendarFile(
      Workshop workshop, ZonedDateTime start, Instant stamp, Optional<String> before) {
    this.workshop = workshop;
    this.agenda = workshop.agenda();
    this.start = start;
    this.stamp = stamp;
    before.map(text -> Biweekly.parse(text).first()).stream()
        .flatMap(calendar -> calendar.getEvents().stream())
        .filter(event -> event.getUid() != null)
        .forEach(event -> earlier.put(event.getUid().getValue(), event));
  }

  /**
   * The file; none if the agenda has no start.
   *
   * @param items whether each item is an event too
   * @param stamp when it is written
   * @param before what the earlier file said, if there is one
   */
  public static Optional<String> of(
      Workshop workshop, boolean items, Instant stamp, Optional<String> before) {
    return workshop
        .agenda()
        .start()
        .map(start -> new CalendarFile(workshop, start, stamp, before).write(items));
  }

  private String write(boolean items) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId("-//Arcwright//EN");
    VTimezone zone = Zones.of(start, start.plus(agenda.cap()));
    calendar
        .getTimezoneInfo()
        .setDefaultTimezone(new TimezoneAssignment(TimeZone.getTimeZone(start.getZone()), zone));
    for (VEvent event : events(items)) {
      calendar.addEvent(event);
    }
    return Folding.anew(Biweekly.write(calendar).go());
  }

  private List<VEvent> events(boolean items) {
    List<VEvent> events = new ArrayList<>();
    String whole = uid("");
    String description = String.join(", ", workshop.facts());
    events.add(event(whole, agenda.title(), description, Duration.ZERO, agenda.cap()));
    if (items) {
      for (Activity activity : agenda.activities()) {
        VEvent event =
            event(
                uid(activity.exercise()),
                activity.title(),
                workshop.exercise(activity).map(exercise -> exercise.purpose()).orElse(""),
                activity.start(),
                activity.end());
        event.addRelatedTo(whole);
        events.add(event);
      }
    }
    return events;
  }

  private String uid(String item) {
    String whose = workshop.brief().title() + "\n" + workshop.brief().goal() + "\n" + item;
    return UUID.nameUUIDFromBytes(whose.getBytes(UTF_8)).toString();
  }

  private VEvent event(String uid, String title, String more, Duration from, Duration to) {
    VEvent event = new VEvent();
    event.setUid(uid);
    event.setSummary(title);
    if (!more.isEmpty()) {
      event.setDescription(more);
    }
    event.setDateStart(Date.from(start.plus(from).toInstant()), true);
    event.setDateEnd(Date.from(start.plus(to).toInstant()), true);
    event.setDateTimeStamp(Date.from(stamp));
    VEvent before = earlier.get(uid);
    int sequence =
        before == null || before.getSequence() == null ? 0 : before.getSequence().getValue();
    event.setSequence(before == null || same(before, event) ? sequence : sequence + 1);
    return event;
  }

  private static boolean same(VEvent one, VEvent other) {
    return one.getDateStart() != null
        && one.getDateEnd() != null
        && one.getSummary() != null
        && one.getDateStart().getValue().getTime() == other.getDateStart().getValue().getTime()
        && one.getDateEnd().getValue().getTime() == other.getDateEnd().getValue().getTime()
        && one.getSummary().getValue().equals(other.getSummary().getValue());
  }
}
