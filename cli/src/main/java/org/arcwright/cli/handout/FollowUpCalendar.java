package org.arcwright.cli.handout;

import static java.nio.charset.StandardCharsets.UTF_8;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.TimezoneAssignment;
import biweekly.property.Status;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import java.util.UUID;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Action;

/**
 * The handover call and the follow-ups in a calendar (RFC 5545). A follow-up is a whole day, to be
 * given an hour by those who hold it; one that nobody arranged is tentative. An event keeps its
 * UID, whatever becomes of its day.
 */
public final class FollowUpCalendar {
  private final Account account;
  private final Language language;
  private final Instant stamp;
  private final Earlier earlier;
  private final ICalendar calendar = new ICalendar();

  private FollowUpCalendar(Account account, Instant stamp, Optional<String> before) {
    this.account = account;
    this.language = account.language();
    this.stamp = stamp;
    this.earlier = new Earlier(before);
  }

  /**
   * The file; none if no day is known.
   *
   * @param stamp when it is written
   * @param before what the earlier file said, if there is one
   */
  public static Optional<String> of(Account account, Instant stamp, Optional<String> before) {
    FollowUpCalendar made = new FollowUpCalendar(account, stamp, before);
    made.calendar.setProductId("-//Arcwright//EN");
    HandoverSheet.begins(account).ifPresent(made::handover);
    List<LocalDate> days = account.followUps();
    for (int i = 0; i < days.size(); i++) {
      made.followUp(days, i);
    }
    return made.calendar.getEvents().isEmpty()
        ? Optional.empty()
        : Optional.of(Folding.anew(Biweekly.write(made.calendar).go()));
  }

  private void handover(ZonedDateTime begin) {
    ZonedDateTime end = begin.plus(HandoverSheet.length(account));
    VTimezone zone = Zones.of(begin, end);
    calendar
        .getTimezoneInfo()
        .setDefaultTimezone(new TimezoneAssignment(TimeZone.getTimeZone(begin.getZone()), zone));
    VEvent event = event("handover", language.say("followup.handover", account.title()));
    event.setDateStart(Date.from(begin.toInstant()), true);
    event.setDateEnd(Date.from(end.toInstant()), true);
    add(event);
  }

  private void followUp(List<LocalDate> days, int place) {
    String title = language.say("followup.title", place + 1, days.size(), account.title());
    VEvent event = event("follow-up " + (place + 1), title);
    List<Action> due = account.due(days, place);
    if (!due.isEmpty()) {
      event.setDescription(
          language.say(
              "followup.due", String.join("\n", due.stream().map(account::line).toList())));
    }
    event.setDateStart(date(days.get(place)));
    event.setDateEnd(date(days.get(place).plusDays(1)));
    if (account.record().after().first().isEmpty()) {
      event.setStatus(Status.tentative());
    }
    add(event);
  }

  /** A day without an hour, the same wherever it is read. */
  private static ICalDate date(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(
            day.getYear(), day.getMonthValue(), day.getDayOfMonth(), 0, 0, 0, false),
        false);
  }

  private VEvent event(String name, String title) {
    String whose = account.title() + "\n" + name;
    VEvent event = new VEvent();
    event.setUid(UUID.nameUUIDFromBytes(whose.getBytes(UTF_8)).toString());
    event.setSummary(title);
    event.setDateTimeStamp(Date.from(stamp));
    return event;
  }

  private void add(VEvent event) {
    earlier.number(event);
    calendar.addEvent(event);
  }
}
