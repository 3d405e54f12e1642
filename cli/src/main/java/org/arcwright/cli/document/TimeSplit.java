package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Agenda.PhaseTitle;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.cli.words.Language;
import org.arcwright.cli.words.Said;

/** Says how the time is split. */
final class TimeSplit {
  private TimeSplit() {}

  static List<String> sentences(Answer answer, Language language) {
    return List.of(whole(answer, language), phases(answer, language));
  }

  private static String whole(Answer answer, Language language) {
    Agenda agenda = answer.agenda();
    List<String> parts = new ArrayList<>();
    parts.add(language.say("why.work", language.minutes(answer.exerciseMinutes())));
    if (answer.pauseMinutes() > 0) {
      parts.add(language.say("why.breaks", language.minutes(answer.pauseMinutes())));
    }
    if (!agenda.buffer().isZero()) {
      parts.add(
          language.say("why.free", language.time(agenda.buffer()), answer.brief().bufferPercent()));
    }
    if (answer.idleMinutes() > 0) {
      parts.add(language.say("why.idle", language.minutes(answer.idleMinutes())));
    }
    return language.say(
        "why.whole", language.minutes(answer.instance().cap()), language.list(parts));
  }

  private static String phases(Answer answer, Language language) {
    Map<String, Integer> minutes = minutesByPhase(answer.agenda());
    int work = answer.exerciseMinutes();
    List<PhaseTitle> largest = new ArrayList<>(answer.agenda().phases());
    largest.sort(
        Comparator.comparing((PhaseTitle phase) -> minutes.getOrDefault(phase.name(), 0))
            .reversed());
    List<String> parts = new ArrayList<>();
    for (PhaseTitle phase : largest) {
      int spent = minutes.getOrDefault(phase.name(), 0);
      String title = language.said(Said.PHASE, phase.title());
      String time = language.minutes(spent);
      parts.add(
          parts.isEmpty()
              ? language.say("why.longest", title, time, (100 * spent + work / 2) / work)
              : language.say("why.phase", title, time));
    }
    String longest = parts.remove(0);
    return parts.isEmpty()
        ? language.say("why.phases.one", longest)
        : language.say("why.phases", longest, language.list(parts));
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
