package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Split;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.Turnout;

/** What to do when people fail, in sentences. Advice is common practice, no source. */
final class PeopleWords {
  private final StandIns standIns;
  private final Agenda agenda;
  private final Clock clock;

  PeopleWords(StandIns standIns) {
    this.standIns = standIns;
    this.agenda = standIns.agenda();
    this.clock = new Clock(agenda.start());
  }

  /** From one fewer down to half; stand-ins are to follow. */
  List<String> fewer() {
    List<String> sentences = new ArrayList<>();
    int least = standIns.fewer().get(0).least();
    List<Turnout> some = standIns.fewer().stream().filter(turnout -> !turnout.always()).toList();
    if (some.isEmpty()) {
      sentences.add(
          "Everything works with "
              + Words.count(least, "person", "people")
              + " or more of the "
              + agenda.people()
              + " planned.");
    }
    groups(least, sentences);
    time(least, sentences);
    for (Turnout turnout : some) {
      if (turnout.standIn().isEmpty()) {
        sentences.add(
            named(turnout.place())
                + " does not work with "
                + counts(turnout.impossible())
                + ", and nothing stands in for it: ask the same question in plenary, and write"
                + " down what comes.");
      }
    }
    if (some.stream().anyMatch(turnout -> turnout.standIn().isPresent())) {
      sentences.add("These do not work with every number; something stands in:");
    }
    return sentences;
  }

  /** With which head counts an exercise cannot be done, to follow its length. */
  static String not(Turnout turnout) {
    return turnout.always() ? "" : ", not with " + counts(turnout.impossible());
  }

  /** {@code 6 people}, {@code 4 to 6 people}, {@code 4 or 6 people}. */
  private static String counts(List<Integer> descending) {
    int most = descending.get(0);
    int least = descending.get(descending.size() - 1);
    if (most - least + 1 == descending.size() && most > least + 1) {
      return least + " to " + most + " people";
    }
    List<String> ascending = new ArrayList<>();
    descending.forEach(count -> ascending.add(0, String.valueOf(count)));
    return Words.list(ascending).replace(" and ", " or ")
        + (descending.size() == 1 && most == 1 ? " person" : " people");
  }

  private void groups(int least, List<String> sentences) {
    Map<String, List<String>> bySplit = new LinkedHashMap<>();
    for (Turnout turnout : standIns.fewer()) {
      turnout
          .groups()
          .ifPresent(
              split ->
                  bySplit
                      .computeIfAbsent(split(split), same -> new ArrayList<>())
                      .add(named(turnout.place())));
    }
    if (!bySplit.isEmpty()) {
      List<String> parts = new ArrayList<>();
      bySplit.forEach((split, names) -> parts.add(split + " in " + Words.list(names)));
      sentences.add("Small groups, with " + least + " people: " + String.join("; ", parts) + ".");
    }
  }

  private static String split(Split split) {
    if (split.groups() == 1) {
      return "one of " + split.people();
    }
    return split.larger() == 0
        ? split.groups() + " of " + split.smaller()
        : (split.groups() - split.larger())
            + " of "
            + split.smaller()
            + " and "
            + split.larger()
            + " of "
            + (split.smaller() + 1);
  }

  private void time(int least, List<String> sentences) {
    Duration planned = Duration.ZERO;
    Duration usual = Duration.ZERO;
    for (Turnout turnout : standIns.fewer()) {
      if (turnout.usual().isPresent()) {
        planned = planned.plus(activity(turnout.place()).length());
        usual = usual.plus(turnout.usual().get());
      }
    }
    Duration saved = planned.minus(usual);
    if (saved.toMinutes() >= 5) {
      sentences.add(
          Words.sentence(Words.count(least, "person usually needs ", "people usually need "))
              + Words.time(Answer.minutes(saved))
              + " less than planned, in all. End earlier, or give it to the talk that needs it.");
    }
  }

  /** Who decides without the sponsor. */
  List<String> sponsor() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Ask today who may decide instead, and up to what; say so at the opening.");
    List<String> places = standIns.decisions().stream().map(this::named).toList();
    sentences.add(
        places.isEmpty()
            ? "Nothing here is a decision: go on as planned. Send what came out the same day, and agree"
                + " on a day for the answer."
            : "If nobody may, "
                + Words.list(places)
                + (places.size() == 1 ? " ends" : " end")
                + " with a recommendation and its reasons. Write down what is open, whose yes it"
                + " takes and by when, and ring the sponsor the same day.");
    return sentences;
  }

  /** What one person can lead and mind; stand-ins are to follow. */
  List<String> producer() {
    List<String> sentences = new ArrayList<>(hands());
    if (standIns.alone().isEmpty()) {
      sentences.add("You can lead every exercise alone.");
    }
    List<String> without =
        standIns.alone().stream()
            .filter(swap -> swap.standIn().isEmpty())
            .map(Swap::place)
            .map(this::named)
            .toList();
    if (!without.isEmpty()) {
      sentences.add(
          "Somebody has to mind the tools in "
              + Words.list(without)
              + ", and nothing stands in. Ask one of the group before you start, and show what to"
              + " press.");
    }
    if (without.size() < standIns.alone().size()) {
      sentences.add("One person can lead these instead:");
    }
    return sentences;
  }

  /** Who does what pages leave to the producer; in a room that is seldom anything. */
  List<String> hands() {
    return switch (agenda.mode()) {
      case REMOTE ->
          List.of(
              "Where a page leaves something to the producer, such as counting or reading back, ask"
                  + " one of the group for that before you start.");
      case HYBRID ->
          List.of(
              "Where a page leaves something to the producer, ask one of those on the call for that"
                  + " before you start; they also speak up for the others there.");
      case IN_PERSON -> List.of();
    };
  }

  private String named(int place) {
    Activity activity = activity(place);
    return clock.at(activity.start()) + " " + Words.quoted(activity.title());
  }

  private Activity activity(int place) {
    return (Activity) agenda.items().get(place);
  }
}
