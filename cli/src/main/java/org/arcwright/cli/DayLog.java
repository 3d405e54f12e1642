package org.arcwright.cli;

import java.nio.file.Path;
import org.arcwright.agenda.Agenda;
import org.arcwright.live.Day;
import org.arcwright.live.Progress;

/** The log of a day and the agenda that it is of. */
final class DayLog {
  private DayLog() {}

  /**
   * The day that both tell of: the agenda begins when the log says.
   *
   * @param file where the log stands
   * @throws Refusal if the log is of another workshop
   */
  static Day day(Agenda agenda, Path file, Progress progress) {
    String logged = progress.workshop().title();
    if (!logged.equals(agenda.title())) {
      throw new Refusal(
          file
              + ": this log is of \""
              + logged
              + "\", the agenda of \""
              + agenda.title()
              + "\"; name the log or the agenda that belongs to the other");
    }
    Agenda onItsDay = progress.workshop().start().map(agenda::startingAt).orElse(agenda);
    return new Day(onItsDay, progress);
  }
}
