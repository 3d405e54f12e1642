package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.compose.Price;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.explain.WhyThis.HandedOn;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.compose.explain.WhyThis.Reason;
import org.arcwright.compose.explain.WhyThis.TakenOver;
import org.arcwright.compose.explain.Wish;

/** Why each exercise is in, and where it is, in sentences worked out from the agenda. */
final class EachExercise {
  /** Tenths of a level under which energy is what was wished for. */
  private static final int NEAR = 5;

  private final Answer answer;
  private final WhyThis why;
  private final Map<String, String> titles;

  /**
   * What there is to say about one.
   *
   * @param heading its number, title and time
   * @param sentences what it takes over and hands on, why here, and the next best
   */
  record Entry(String heading, List<String> sentences) {}

  private EachExercise(Answer answer, WhyThis why) {
    this.answer = answer;
    this.why = why;
    this.titles =
        why.agenda().activities().stream()
            .collect(Collectors.toMap(Activity::exercise, Activity::title, (one, other) -> one));
  }

  static List<Entry> entries(Answer answer, WhyThis why) {
    EachExercise each = new EachExercise(answer, why);
    List<Entry> entries = new ArrayList<>();
    for (Reason reason : why.reasons()) {
      Activity activity = reason.activity();
      String time = answer.clock().at(activity.start());
      String length = Words.time(activity.length());
      List<String> sentences = new ArrayList<>();
      sentences.add(each.carried(reason));
      sentences.add(each.place(reason));
      each.instead(reason).ifPresent(sentences::add);
      entries.add(
          new Entry(
              entries.size() + 1 + ". " + activity.title() + " (" + time + ", " + length + ")",
              sentences));
    }
    return entries;
  }

  private String carried(Reason reason) {
    List<String> parts = new ArrayList<>();
    if (!reason.takesOver().isEmpty()) {
      parts.add("takes over " + Words.list(reason.takesOver().stream().map(this::taken).toList()));
    }
    if (!reason.handsOn().isEmpty()) {
      parts.add("leaves " + Words.list(reason.handsOn().stream().map(this::handed).toList()));
    }
    return parts.isEmpty()
        ? "It stands by itself: it needs nothing from the others and leaves nothing they need."
        : "It " + String.join(", and ", parts) + ".";
  }

  private String taken(TakenOver taken) {
    return answer.product(taken.product())
        + taken.from().map(from -> " from " + title(from)).orElse(" (there beforehand)");
  }

  private String handed(HandedOn handed) {
    List<String> to = handed.to().stream().map(this::title).toList();
    return answer.product(handed.product())
        + (to.isEmpty() ? " (which this phase has to leave)" : " for " + Words.list(to));
  }

  private String place(Reason reason) {
    Activity activity = reason.activity();
    String phase = Words.quoted(answer.phaseTitle(activity.phase()));
    List<String> parts = new ArrayList<>();
    parts.add(role(activity) + " " + phase);
    if (reason.place().afterBreak() || reason.place().beforeBreak()) {
      parts.add(
          reason.place().afterBreak()
              ? reason.place().beforeBreak() ? "between two breaks" : "right after a break"
              : "right before a break");
    }
    return asked(reason.place().asked(), activity)
        + Words.sentence(String.join(", ", parts))
        + "; "
        + energy(activity.energy(), reason.place().wished())
        + ".";
  }

  private String role(Activity activity) {
    List<Activity> phase =
        why.agenda().activities().stream()
            .filter(other -> other.phase().equals(activity.phase()))
            .toList();
    if (phase.size() == 1) {
      return "it is all of";
    }
    int at = phase.indexOf(activity);
    return at == 0 ? "it opens" : at == phase.size() - 1 ? "it ends" : "it is in the middle of";
  }

  private static String energy(int own, int wished) {
    int off = own - wished;
    String level = Words.level(own) + " of 5";
    if (Math.abs(off) < NEAR) {
      return "its energy, " + level + ", is about what you wish for then";
    }
    return "its energy, "
        + level
        + ", is "
        + (off > 0 ? "livelier" : "calmer")
        + " than the "
        + Words.level(wished)
        + " you wish for then";
  }

  private String asked(Optional<Wish> asked, Activity activity) {
    if (asked.isEmpty()) {
      return "";
    }
    boolean timed =
        asked.get() instanceof Wish.Pinned
            || (asked.get() instanceof Wish.Own own && own.item().at().isPresent());
    return "You asked for it" + (timed ? " " + answer.clock().said(activity.start()) : "") + ". ";
  }

  private Optional<String> instead(Reason reason) {
    if (reason.instead() instanceof Instead.Swap swap) {
      return Optional.of(swap(reason.activity(), swap));
    }
    if (reason.instead() instanceof Instead.Anew anew) {
      return Optional.of(
          "No other exercise fits in its place with all else as it is. Without it the "
              + (anew.proof().best() ? "best agenda" : "best agenda found")
              + " is "
              + comparison(anew.agenda(), answer.composed().prices(), anew.prices())
              + comesAndGoes(anew.agenda()));
    }
    if (reason.instead() instanceof Instead.Nothing) {
      return Optional.of("No agenda for this brief does without it.");
    }
    return reason.instead() instanceof Instead.Unknown
        ? Optional.of(
            "The budget ended before the next best in its place was known; a larger --budget finds"
                + " it.")
        : Optional.empty();
  }

  private String swap(Activity activity, Instead.Swap swap) {
    Activity other =
        swap.agenda().activities().stream()
            .filter(a -> a.exercise().equals(swap.exercise()))
            .findFirst()
            .orElseThrow();
    List<Price> own =
        answer.composed().prices().stream()
            .filter(price -> price.exercise().equals(activity.exercise()))
            .toList();
    return "Next best in its place: "
        + Words.quoted(other.title())
        + " ("
        + Words.time(other.length())
        + ", "
        + Words.format(other.format())
        + "). The agenda would be "
        + comparison(swap.agenda(), own, swap.prices());
  }

  private String comparison(Agenda with, List<Price> before, List<Price> after) {
    String verdict = CostWords.verdict(why.agenda().figures().cost(), with.figures().cost());
    String causes =
        CostWords.causes(
            new CostWords.Side(why.agenda().figures(), before),
            new CostWords.Side(with.figures(), after),
            answer.instance().weights(),
            this::title);
    return verdict + (causes.isEmpty() ? "." : ": " + causes + ".");
  }

  private String comesAndGoes(Agenda with) {
    Set<String> after = new HashSet<>();
    with.activities().forEach(activity -> after.add(activity.exercise()));
    List<String> comes =
        with.activities().stream()
            .filter(activity -> !titles.containsKey(activity.exercise()))
            .map(activity -> Words.quoted(activity.title()))
            .toList();
    List<String> goes =
        why.agenda().activities().stream()
            .filter(activity -> !after.contains(activity.exercise()))
            .map(activity -> Words.quoted(activity.title()))
            .toList();
    return " "
        + (comes.isEmpty()
            ? "Nothing comes"
            : Words.list(comes) + (comes.size() == 1 ? " comes" : " come"))
        + " in for "
        + Words.list(goes)
        + ".";
  }

  private String title(String id) {
    return Words.quoted(
        Optional.ofNullable(titles.get(id))
            .or(() -> answer.catalog().exercise(id).map(exercise -> exercise.title()))
            .orElse(id));
  }
}
