package org.arcwright.cli.handout;

import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VTimezone;
import biweekly.util.DateTimeComponents;
import biweekly.util.UtcOffset;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/** Describes a zone as a VTIMEZONE (RFC 5545, 3.6.5), as far as an event needs it. */
final class Zones {
  private Zones() {}

  /** The zone's offset before, during and up to a year after the event. */
  static VTimezone of(ZonedDateTime from, ZonedDateTime to) {
    ZoneRules rules = from.getZone().getRules();
    VTimezone zone = new VTimezone(from.getZone().getId());
    ZoneOffsetTransition last = rules.previousTransition(from.toInstant().plusNanos(1));
    if (last == null) {
      ZoneOffset offset = rules.getOffset(from.toInstant());
      add(zone, false, LocalDateTime.of(1970, 1, 1, 0, 0), offset, offset);
    }
    Instant end = to.plusYears(1).toInstant();
    for (ZoneOffsetTransition change = last == null ? rules.nextTransition(from.toInstant()) : last;
        change != null && !change.getInstant().isAfter(end);
        change = rules.nextTransition(change.getInstant())) {
      add(
          zone,
          rules.isDaylightSavings(change.getInstant()),
          change.getDateTimeBefore(),
          change.getOffsetBefore(),
          change.getOffsetAfter());
    }
    return zone;
  }

  private static void add(
      VTimezone zone, boolean daylight, LocalDateTime begin, ZoneOffset from, ZoneOffset to) {
    Observance observance = daylight ? new DaylightSavingsTime() : new StandardTime();
    observance.setDateStart(
        new DateTimeComponents(
            begin.getYear(),
            begin.getMonthValue(),
            begin.getDayOfMonth(),
            begin.getHour(),
            begin.getMinute(),
            begin.getSecond(),
            false));
    observance.setTimezoneOffsetFrom(new UtcOffset(1000L * from.getTotalSeconds()));
    observance.setTimezoneOffsetTo(new UtcOffset(1000L * to.getTotalSeconds()));
    zone.addComponent(observance);
  }
}
