package org.arcwright.cli.handout;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Action;
import org.arcwright.record.Course;
import org.arcwright.record.Decision;
import org.arcwright.record.WorkshopRecord;

/**
 * All that is handed out after the day is drawn from this.
 *
 * @param record what came of it
 * @param course how the day went beside its plan
 * @param start when it was to start, as the record or else the agenda has it
 * @param language in which handouts are written
 */
public record Account(
    WorkshopRecord record, Course course, Optional<ZonedDateTime> start, Language language) {
  /** Of a record and, if there is one, the agenda that the day was to follow. */
  public static Account of(
      WorkshopRecord record, Optional<Agenda> agenda, Catalog catalog, Language language) {
    return new Account(
        record,
        Course.of(record, agenda, catalog),
        record.workshop().start().or(() -> agenda.flatMap(Agenda::start)),
        language);
  }

  String title() {
    return record.workshop().title();
  }

  Hours hours() {
    return new Hours(start, language);
  }

  /** Place, people, day and hours, and who asked for it, each in a few words. */
  List<String> facts() {
    Hours hours = hours();
    List<String> facts = new ArrayList<>();
    record.sponsor().ifPresent(who -> facts.add(language.say("report.sponsor", who)));
    facts.add(language.name("mode", record.workshop().mode()));
    facts.add(language.say("people", record.workshop().people()));
    hours.date().ifPresent(facts::add);
    course
        .ended()
        .ifPresent(
            end -> {
              String span = hours.span(course.begun().orElse(Duration.ZERO), end);
              facts.add(
                  hours.zone().map(zone -> language.say("hours.zone", span, zone)).orElse(span));
            });
    return facts;
  }

  /** The days of the follow-ups; none if the day of the workshop is not known. */
  List<LocalDate> followUps() {
    return record
        .after()
        .first()
        .or(() -> start.map(ZonedDateTime::toLocalDate))
        .map(day -> record.after().days(day))
        .orElse(List.of());
  }

  /** Whether the follow-ups are on Mondays since the workshop was at a weekend. */
  boolean isFollowedUpAfterWeekend() {
    return start.map(ZonedDateTime::toLocalDate).filter(record.after()::afterWeekend).isPresent();
  }

  /** What is due by the follow-up of that place and was not by the one before. */
  List<Action> due(List<LocalDate> days, int place) {
    return record.actions().stream()
        .filter(
            action ->
                action.when().filter(day -> !day.isAfter(days.get(place))).isPresent()
                    && (place == 0 || action.when().get().isAfter(days.get(place - 1))))
        .toList();
  }

  /** Who does what, in a line. */
  String line(Action action) {
    String text = language.say("report.action", action.who(), action.what());
    return action
        .when()
        .map(day -> language.say("report.action.by", text, language.day(day)))
        .orElse(text);
  }

  /** By whom and how, in a sentence; empty if neither is known. */
  String way(Decision decision) {
    List<String> parts = new ArrayList<>();
    decision.by().ifPresent(by -> parts.add(language.say("report.by", by)));
    decision.how().ifPresent(how -> parts.add(language.say("report.how", how)));
    return language.sentence(language.capital(String.join("; ", parts)));
  }
}
