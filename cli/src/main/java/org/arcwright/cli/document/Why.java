package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;

/** Why an agenda is built as it is, in sentences worked out from its figures. */
public final class Why {
  private Why() {}

  /** The sentences, of which each has its figures from the agenda. */
  public static List<String> sentences(Answer answer) {
    List<String> sentences = new ArrayList<>(TimeSplit.sentences(answer));
    answer.sureness().ifPresent(sureness -> sentences.add(sureness.sentence()));
    sentences.addAll(BreakReasons.sentences(answer));
    sentences.addAll(EnergyRun.sentences(answer));
    sentences.addAll(wishes(answer));
    sentences.addAll(CarryOver.sentences(answer));
    return sentences;
  }

  private static List<String> wishes(Answer answer) {
    List<String> kept = new ArrayList<>();
    for (Activity activity : answer.agenda().activities()) {
      String title = Words.quoted(activity.title());
      if (isPinned(answer, activity.exercise())) {
        kept.add(title + " starts " + answer.clock().said(activity.start()) + " as you asked");
      } else if (answer.instance().include().contains(activity.exercise())) {
        kept.add(title + " is in");
      }
    }
    return kept.isEmpty() ? List.of() : List.of("Your wishes: " + Words.list(kept) + ".");
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
