package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.cli.words.Language;

/** Says where the breaks fall, and why there. */
final class BreakReasons {
  private final Answer answer;
  private final Language language;
  private final List<AgendaItem> items;
  private final int longest;

  private BreakReasons(Answer answer, Language language) {
    this.answer = answer;
    this.language = language;
    this.items = answer.agenda().items();
    this.longest = answer.instance().stretch().max();
  }

  static List<String> sentences(Answer answer, Language language) {
    return new BreakReasons(answer, language).sentences();
  }

  private List<String> sentences() {
    if (answer.pauses().isEmpty()) {
      String work = language.minutes(answer.exerciseMinutes());
      return List.of(language.say("why.no-break", work, language.minutes(longest)));
    }
    List<String> sentences = new ArrayList<>();
    for (int i = 1; i < items.size(); i++) {
      if (items.get(i) instanceof Pause pause) {
        sentences.add(pause.meal() ? meal(pause, i) : ordinary(pause, i));
      }
    }
    return sentences;
  }

  private String meal(Pause pause, int at) {
    String when = answer.clock().said(pause.start(), language);
    return language.say("why.meal", when, language.minutes(stretch(at, -1)));
  }

  private String ordinary(Pause pause, int at) {
    int before = stretch(at, -1);
    String when = answer.clock().said(pause.start(), language);
    String after = language.minutes(before);
    if (at + 1 < items.size() && items.get(at + 1) instanceof Activity next) {
      int without = before + Answer.minutes(next.length());
      if (without > longest) {
        return language.say(
            "why.break.limit",
            when,
            after,
            next.title(),
            language.minutes(without),
            language.minutes(longest));
      }
      if (items.get(at - 1) instanceof Activity last && last.format() == next.format()) {
        return language.say(
            "why.break.format", when, after, language.name("format", next.format()));
      }
    }
    return language.say("why.break", when, after, language.minutes(stretch(at, 1)));
  }

  /** Exercise minutes in a row from an item on, forwards or backwards. */
  private int stretch(int from, int step) {
    int minutes = 0;
    for (int i = from + step; i >= 0 && i < items.size(); i += step) {
      if (items.get(i) instanceof Pause) {
        break;
      }
      minutes += Answer.minutes(items.get(i).length());
    }
    return minutes;
  }
}
