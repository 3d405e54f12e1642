package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Agenda.PhaseTitle;
import org.arcwright.agenda.AgendaItem.Activity;

/** Says how the time is split. */
final class TimeSplit {
  private TimeSplit() {}

  static List<String> sentences(Answer answer) {
    return List.of(whole(answer), phases(answer));
  }

  private static String whole(Answer answer) {
    Agenda agenda = answer.agenda();
    int percent = answer.brief().bufferPercent();
    List<String> parts = new ArrayList<>();
    parts.add(Words.time(answer.exerciseMinutes()) + " go to the work itself");
    if (answer.pauseMinutes() > 0) {
      parts.add(Words.time(answer.pauseMinutes()) + " go to breaks");
    }
    if (!agenda.buffer().isZero()) {
      parts.add(
          Words.time(agenda.buffer())
              + " stay free at the close ("
              + percent
              + " % of the work, for what runs over)");
    }
    if (answer.idleMinutes() > 0) {
      parts.add(Words.time(answer.idleMinutes()) + " are left over");
    }
    return "Of " + Words.time(answer.instance().cap()) + ", " + Words.list(parts) + ".";
  }

  private static String phases(Answer answer) {
    Map<String, Integer> minutes = minutesByPhase(answer.agenda());
    int work = answer.exerciseMinutes();
    List<PhaseTitle> largest = new ArrayList<>(answer.agenda().phases());
    largest.sort(
        Comparator.comparing((PhaseTitle phase) -> minutes.getOrDefault(phase.name(), 0))
            .reversed());
    List<String> parts = new ArrayList<>();
    for (PhaseTitle phase : largest) {
      int spent = minutes.getOrDefault(phase.name(), 0);
      String share =
          parts.isEmpty() ? " (" + (100 * spent + work / 2) / work + " % of the work)" : "";
      parts.add(Words.quoted(phase.title()) + " with " + Words.time(spent) + share);
    }
    String longest = parts.remove(0);
    return "The longest phase is "
        + longest
        + (parts.isEmpty() ? "" : "; then come " + Words.list(parts))
        + ".";
  }

  /** Exercise minutes for each phase, in the order of phases. */
  static Map<String, Integer> minutesByPhase(Agenda agenda) {
    Map<String, Integer> minutes = new LinkedHashMap<>();
    for (Activity activity : agenda.activities()) {
      minutes.merge(activity.phase(), Answer.minutes(activity.length()), Integer::sum);
    }
    return minutes;
  }
}
