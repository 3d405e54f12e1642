package org.arcwright.cli.handout;

import static java.nio.charset.StandardCharsets.UTF_8;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.TimezoneAssignment;
import biweekly.property.DateEnd;
import biweekly.property.DateOrDateTimeProperty;
import biweekly.property.DateStart;
import biweekly.property.Transparency;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.UUID;

/**
 * The events of a calendar file (RFC 5545). An event keeps its UID whatever becomes of its time or
 * its place in the file, and its SEQUENCE grows whenever it is not what the earlier file said.
 */
final class CalendarEvents {
  private final ICalendar calendar = new ICalendar();
  private Optional<TimezoneAssignment> zone = Optional.empty();
  private final Instant stamp;
  private final String whose;
  private final Map<String, VEvent> earlier = new HashMap<>();

  /**
   * No events yet.
   *
   * @param whose what tells its events from those of others, such as the workshop's title
   * @param stamp when the file is written
   * @param before what the earlier file said, if there is one
   */
  CalendarEvents(String whose, Instant stamp, Optional<String> before) {
    this.whose = whose;
    this.stamp = stamp;
    calendar.setProductId("-//Arcwright//EN");
    before.map(text -> Biweekly.parse(text).first()).stream()
        .flatMap(file -> file.getEvents().stream())
        .filter(event -> event.getUid() != null)
        .forEach(event -> earlier.put(event.getUid().getValue(), event));
  }

  /** The UID of what the word names among these events. */
  String uid(String word) {
    return UUID.nameUUIDFromBytes((whose + "\n" + word).getBytes(UTF_8)).toString();
  }

  /**
   * Adds an event from one time to another; {@code more} may be empty. All such events are in the
   * zone of the first, and within its hours or near them.
   */
  VEvent add(String word, String title, String more, ZonedDateTime from, ZonedDateTime to) {
    VEvent event = event(word, title, more);
    DateStart start = event.setDateStart(Date.from(from.toInstant()), true);
    DateEnd end = event.setDateEnd(Date.from(to.toInstant()), true);
    if (!isNearChange(from, to)) {
      TimezoneAssignment local = zone(from, to);
      calendar.getTimezoneInfo().setTimezone(start, local);
      calendar.getTimezoneInfo().setTimezone(end, local);
    }
    return count(event);
  }

  private TimezoneAssignment zone(ZonedDateTime from, ZonedDateTime to) {
    if (zone.isEmpty()) {
      zone =
          Optional.of(
              new TimezoneAssignment(TimeZone.getTimeZone(from.getZone()), Zones.of(from, to)));
    }
    return zone.get();
  }

  /**
   * Whether the clocks are changed within a day of it. Some hours then exist twice, and calendars
   * disagree about those around them, so such an event stands there in UTC, which all read alike.
   */
  private static boolean isNearChange(ZonedDateTime from, ZonedDateTime to) {
    ZoneOffsetTransition next =
        from.getZone().getRules().nextTransition(from.minusDays(1).toInstant());
    return next != null && next.getInstant().isBefore(to.plusDays(1).toInstant());
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
    return one.getSummary() != null
        && one.getSummary().getValue().equals(other.getSummary().getValue())
        && same(one.getDateStart(), other.getDateStart())
        && same(one.getDateEnd(), other.getDateEnd());
  }

  private static boolean same(DateOrDateTimeProperty one, DateOrDateTimeProperty other) {
    return one != null && one.getValue().getTime() == other.getValue().getTime();
  }

  /** The file; none if nothing was added. */
  Optional<String> write() {
    return calendar.getEvents().isEmpty()
        ? Optional.empty()
        : Optional.of(Folding.anew(Biweekly.write(calendar).go()));
  }
}
