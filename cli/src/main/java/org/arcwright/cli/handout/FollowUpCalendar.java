package org.arcwright.cli.handout;

import biweekly.component.VEvent;
import biweekly.property.Status;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Action;

/**
 * The handover call and the follow-ups in a calendar. A follow-up is a whole day, to be given an
 * hour by those who hold it; one that nobody arranged is tentative.
 */
public final class FollowUpCalendar {
  private final Account account;
  private final Language language;
  private final CalendarEvents events;

  private FollowUpCalendar(Account account, Instant stamp, Optional<String> before) {
    this.account = account;
    this.language = account.language();
    this.events = new CalendarEvents(account.title(), stamp, before);
  }

  /**
   * The file; none if no day is known.
   *
   * @param stamp when it is written
   * @param before what the earlier file said, if there is one
   */
  public static Optional<String> of(Account account, Instant stamp, Optional<String> before) {
    FollowUpCalendar made = new FollowUpCalendar(account, stamp, before);
    made.handover();
    List<LocalDate> days = account.followUps();
    for (int i = 0; i < days.size(); i++) {
      made.followUp(days, i);
    }
    return made.events.write();
  }

  private void handover() {
    String title = language.say("followup.handover", account.title());
    HandoverSheet.begins(account)
        .ifPresent(
            begin ->
                events.add(
                    "handover", title, "", begin, begin.plus(HandoverSheet.length(account))));
  }

  private void followUp(List<LocalDate> days, int place) {
    String title = language.say("followup.title", place + 1, days.size(), account.title());
    List<Action> due = account.due(days, place);
    String lines = due.stream().map(account::line).collect(Collectors.joining("\n"));
    String more = due.isEmpty() ? "" : language.say("followup.due", lines);
    VEvent event = events.add("follow-up " + (place + 1), title, more, days.get(place));
    if (account.record().after().first().isEmpty()) {
      event.setStatus(Status.tentative());
    }
  }
}
