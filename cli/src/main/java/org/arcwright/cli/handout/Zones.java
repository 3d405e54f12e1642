package org.arcwright.cli.handout;

import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VTimezone;
import biweekly.util.DateTimeComponents;
import biweekly.util.DayOfWeek;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import biweekly.util.UtcOffset;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Describes a zone as a VTIMEZONE (RFC 5545, 3.6.5), as far as an event needs it. */
final class Zones {
  private static final int YEARS = 28;

  private Zones() {}

  /** The zone's offset before, during and up to a year after the event. */
  static VTimezone of(ZonedDateTime from, ZonedDateTime to) {
    ZoneRules rules = from.getZone().getRules();
    VTimezone zone = new VTimezone(from.getZone().getId());
    if (everyYear(zone, rules, from.getYear() - 1)) {
      return zone;
    }
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

  /**
   * Adds the zone's changes as rules that hold every year from that one, which more programs
   * understand than single days; adds nothing if they do not hold so.
   */
  private static boolean everyYear(VTimezone zone, ZoneRules rules, int year) {
    List<ZoneOffsetTransition> single = rules.getTransitions();
    boolean ruled =
        !rules.getTransitionRules().isEmpty()
            && !single.isEmpty()
            && single.get(single.size() - 1).getDateTimeBefore().getYear() < year;
    List<Recurrence> recurrences = new ArrayList<>();
    for (ZoneOffsetTransitionRule rule : rules.getTransitionRules()) {
      recurrence(rule, year).ifPresent(recurrences::add);
    }
    if (!ruled || recurrences.size() < rules.getTransitionRules().size()) {
      return false;
    }
    for (int i = 0; i < recurrences.size(); i++) {
      ZoneOffsetTransition change = rules.getTransitionRules().get(i).createTransition(year);
      add(
              zone,
              rules.isDaylightSavings(change.getInstant()),
              change.getDateTimeBefore(),
              change.getOffsetBefore(),
              change.getOffsetAfter())
          .setRecurrenceRule(recurrences.get(i));
    }
    return true;
  }

  /** Such as the last Sunday in March, if the rule's local days are so for many years. */
  private static Optional<Recurrence> recurrence(ZoneOffsetTransitionRule rule, int year) {
    List<LocalDate> days =
        IntStream.range(year, year + YEARS)
            .mapToObj(y -> rule.createTransition(y).getDateTimeBefore().toLocalDate())
            .toList();
    LocalDate first = days.get(0);
    if (days.stream()
        .anyMatch(
            day ->
                day.getMonth() != first.getMonth() || day.getDayOfWeek() != first.getDayOfWeek())) {
      return Optional.empty();
    }
    int week = days.stream().allMatch(Zones::isLast) ? -1 : week(first);
    if (week > 0 && days.stream().anyMatch(day -> week(day) != week)) {
      return Optional.empty();
    }
    return Optional.of(
        new Recurrence.Builder(Frequency.YEARLY)
            .byMonth(first.getMonthValue())
            .byDay(week, DayOfWeek.valueOf(first.getDayOfWeek().name()))
            .build());
  }

  private static boolean isLast(LocalDate day) {
    return day.plusWeeks(1).getMonth() != day.getMonth();
  }

  private static int week(LocalDate day) {
    return (day.getDayOfMonth() - 1) / 7 + 1;
  }

  private static Observance add(
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
    return observance;
  }
}
