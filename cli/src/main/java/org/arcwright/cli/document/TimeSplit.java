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
    int most = minutes.getOrDefault(largest.get(0).name(), 0);
    List<String> longest = new ArrayList<>();
    List<String> shorter = new ArrayList<>();
    for (PhaseTitle phase : largest) {
      int spent = minutes.getOrDefault(phase.name(), 0);
      String title = language.say("why.title", language.said(Said.PHASE, phase.title()));
      if (spent == most) {
        longest.add(title);
      } else {
        shorter.add(language.say("why.phase", title, language.minutes(spent)));
      }
    }
    String first =
        longest.size() == 1
            ? language.say(
                "why.longest",
                longest.get(0),
                language.minutes(most),
                (100 * most + work / 2) / work)
            : language.say("why.longest.tied", language.list(longest), language.minutes(most));
    return shorter.isEmpty()
        ? language.say("why.phases.one", first)
        : language.say("why.phases", first, language.list(shorter));
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
