package org.arcwright.cli.picture;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;

/** Says what the picture of an agenda shows. */
public final class ArcWords {
  private ArcWords() {}

  /** A sentence for each thing that is seen. */
  public static List<String> of(Agenda agenda, Language language) {
    Hours hours = new Hours(agenda.start(), language);
    List<String> sentences = new ArrayList<>();
    sentences.add(language.say("arc.axes", hours.at(Duration.ZERO), hours.at(agenda.cap())));
    curve(agenda, language, hours, sentences);
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      String span = hours.span(item.start(), item.end());
      if (item instanceof Activity activity) {
        sentences.add(
            language.say(
                "arc.bar",
                ++number,
                activity.title(),
                language.kind(activity.kind()),
                span,
                language.level(activity.energy())));
      } else if (item instanceof Pause pause) {
        sentences.add(language.say(pause.meal() ? "arc.meal" : "arc.break", span));
      }
    }
    if (!agenda.buffer().isZero()) {
      sentences.add(language.say("arc.free", language.time(agenda.buffer())));
    }
    return sentences;
  }

  private static void curve(Agenda agenda, Language language, Hours hours, List<String> sentences) {
    List<Integer> curve = agenda.curve();
    if (curve.isEmpty()) {
      return;
    }
    int highest = 0;
    for (int i = 1; i < curve.size(); i++) {
      highest = curve.get(i) > curve.get(highest) ? i : highest;
    }
    Duration at = agenda.cap().multipliedBy(2L * highest + 1).dividedBy(2L * curve.size());
    sentences.add(
        language.say(
            "arc.curve",
            language.level(curve.get(0)),
            language.level(curve.get(highest)),
            hours.at(Duration.ofMinutes(at.toMinutes())),
            language.level(curve.get(curve.size() - 1))));
  }
}
