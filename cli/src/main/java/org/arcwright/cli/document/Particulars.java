package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;

/** What stands below an agenda's title: goal, mode, people, date and hours. */
final class Particulars {
  private Particulars() {}

  static List<String> of(Answer answer, char dash) {
    Agenda agenda = answer.agenda();
    Clock clock = answer.clock();
    List<String> parts = new ArrayList<>();
    parts.add(answer.goal().title());
    parts.add(Words.mode(agenda.mode()));
    parts.add(agenda.people() == 1 ? "1 person" : agenda.people() + " people");
    clock.date().ifPresent(parts::add);
    String hours = clock.at(Duration.ZERO) + dash + clock.at(agenda.cap());
    parts.add(clock.zone().map(zone -> hours + " (" + zone + ")").orElse(Words.time(agenda.cap())));
    return parts;
  }
}
