package org.arcwright.cli.handout;

import static java.nio.charset.StandardCharsets.UTF_8;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.TimezoneAssignment;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Transparency;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.UUID;
import org.arcwright.brief.Brief;

/**
 * The events of a calendar file (RFC 5545). An event keeps its UID whatever becomes of its time or
 * its place in the file, and its SEQUENCE grows whenever it is not what the earlier file said.
 */
final class CalendarEvents {
  private final ICalendar calendar = new ICalendar();
  private final Instant stamp;
  private final Brief brief;
  private final Map<String, VEvent> earlier = new HashMap<>();

  /**
   * No events yet.
   *
   * @param brief whose title and goal tell its events from those of others
   * @param from when the first of them starts, in the zone of them all
   * @param to when the last of them ends
   * @param stamp when the file is written
   * @param before what the earlier file said, if there is one
   */
  CalendarEvents(
      Brief brief, ZonedDateTime from, ZonedDateTime to, Instant stamp, Optional<String> before) {
    this.brief = brief;
    this.stamp = stamp;
    calendar.setProductId("-//Arcwright//EN");
    VTimezone zone = Zones.of(from, to);
    calendar
        .getTimezoneInfo()
        .setDefaultTimezone(new TimezoneAssignment(TimeZone.getTimeZone(from.getZone()), zone));
    before.map(text -> Biweekly.parse(text).first()).stream()
        .flatMap(file -> file.getEvents().stream())
        .filter(event -> event.getUid() != null)
        .forEach(event -> earlier.put(event.getUid().getValue(), event));
  }

  /** The UID of what the word names among this brief's events. */
  String uid(String word) {
    String whose = brief.title() + "\n" + brief.goal() + "\n" + word;
    return UUID.nameUUIDFromBytes(whose.getBytes(UTF_8)).toString();
  }

  /** Adds an event from one time to another; {@code more} may be empty. */
  VEvent add(String word, String title, String more, ZonedDateTime from, ZonedDateTime to) {
    VEvent event = event(word, title, more);
    event.setDateStart(Date.from(from.toInstant()), true);
    event.setDateEnd(Date.from(to.toInstant()), true);
    return count(event);
  }

  /** Adds an event on a day that leaves the day free for others. */
  VEvent add(String word, String title, String more, LocalDate day) {
    VEvent event = event(word, title, more);
    event.setDateStart(new DateStart(date(day)));
    event.setDateEnd(new DateEnd(date(day.plusDays(1))));
    event.setTransparency(Transparency.transparent());
    return count(event);
  }

  private static ICalDate date(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(
            day.getYear(), day.getMonthValue(), day.getDayOfMonth(), 0, 0, 0, false),
        false);
  }

  private VEvent event(String word, String title, String more) {
    VEvent event = new VEvent();
    event.setUid(uid(word));
    event.setSummary(title);
    if (!more.isEmpty()) {
      event.setDescription(more);
    }
    event.setDateTimeStamp(Date.from(stamp));
    calendar.addEvent(event);
    return event;
  }

  private VEvent count(VEvent event) {
    VEvent before = earlier.get(event.getUid().getValue());
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

  /** The file. */
  String write() {
    return Folding.anew(Biweekly.write(calendar).go());
  }
}
