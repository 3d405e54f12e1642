package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.cli.words.Language;

/** Why an agenda is built as it is, in sentences worked out from its figures. */
public final class Why {
  private Why() {}

  /** The sentences, of which each has its figures from the agenda. */
  public static List<String> sentences(Answer answer, Language language) {
    List<String> sentences = new ArrayList<>(TimeSplit.sentences(answer, language));
    answer.sureness().ifPresent(sureness -> sentences.add(sureness.sentence(language)));
    sentences.addAll(BreakReasons.sentences(answer, language));
    sentences.addAll(EnergyRun.sentences(answer, language));
    sentences.addAll(wishes(answer, language));
    sentences.addAll(CarryOver.sentences(answer, language));
    return sentences;
  }

  private static List<String> wishes(Answer answer, Language language) {
    List<String> kept = new ArrayList<>();
    for (Activity activity : answer.agenda().activities()) {
      if (isPinned(answer, activity.exercise())) {
        String at = answer.clock().said(activity.start(), language);
        kept.add(language.say("why.pinned", activity.title(), at));
      } else if (answer.instance().include().contains(activity.exercise())) {
        kept.add(language.say("why.included", activity.title()));
      }
    }
    return kept.isEmpty() ? List.of() : List.of(language.say("why.wishes", language.list(kept)));
  }

  private static boolean isPinned(Answer answer, String id) {
    for (Wishes.Pin pin : answer.brief().wishes().pins()) {
      if (pin.exercise().equals(id)) {
        return true;
      }
    }
    for (OwnItem item : answer.brief().ownItems()) {
      if (item.id().equals(id) && item.at().isPresent()) {
        return true;
      }
    }
    return false;
  }
}
