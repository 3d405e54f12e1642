package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Price;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.compose.explain.Wish;

/** Why an exercise is not in an agenda, as text. */
public final class WhyNotPage {
  private final Wish asked;
  private final String title;
  private final Agenda agenda;
  private final CostWords.Side before;
  private final Catalog catalog;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param exercise the id asked about
   * @param agenda in which it is missed
   * @param figures of that agenda, counted for the brief
   * @param prices of its exercises with that brief
   * @param width of a line in characters
   */
  public WhyNotPage(
      String exercise,
      Agenda agenda,
      Figures figures,
      List<Price> prices,
      Catalog catalog,
      int width) {
    this.catalog = catalog;
    this.asked = new Wish.Include(exercise);
    this.title = title(exercise);
    this.agenda = agenda;
    this.before = new CostWords.Side(figures, prices);
    this.width = width;
  }

  /**
   * Writes it.
   *
   * @param briefName the brief's file, if it is a file of its own
   * @param line the line in it that rules the exercise out, if one does
   */
  public String write(WhyNot answer, Optional<String> briefName, OptionalInt line) {
    if (answer instanceof WhyNot.IsIn in) {
      text(title + " is in, " + clock().said(in.activity().start()) + ".");
    } else if (answer instanceof WhyNot.RuledOut ruled) {
      text(title + " is ruled out: " + ruled.leftOut().reason() + ".");
      ruled.leftOut().field().ifPresent(field -> text(where(field, briefName, line)));
      lines.addAll(ClashPage.lines(beside(ruled.clash()), width));
    } else if (answer instanceof WhyNot.Possible possible) {
      possible(possible.with());
      if (!possible.with().proof().best()) {
        text("A better agenda with it may exist; the budget ended before that was ruled out.");
      }
    } else if (answer instanceof WhyNot.Impossible impossible) {
      text("The brief allows " + title + ", but no agenda fits with it in.");
      lines.addAll(ClashPage.lines(beside(impossible.clash()), width));
    } else {
      text("The budget ended before that was known. Give it more time with --budget.");
    }
    return Words.untied(String.join("\n", lines)) + "\n";
  }

  /** The clash without what goes without saying: that the exercise is not had, or done without. */
  private Clash beside(Clash clash) {
    return new Clash(
        clash.conflicts().stream()
            .filter(conflict -> conflict.wishes().stream().anyMatch(each -> !isAsked(each.wish())))
            .toList(),
        clash.waysOut().stream()
            .filter(way -> way.loosenings().stream().anyMatch(each -> !isAsked(each.wish())))
            .toList(),
        clash.complete());
  }

  private boolean isAsked(Wish wish) {
    return wish.equals(asked);
  }

  private static String where(String field, Optional<String> briefName, OptionalInt line) {
    if (briefName.isEmpty()) {
      return "In the brief that is " + field + ".";
    }
    return line.isPresent()
        ? "In the brief that is "
            + field
            + ": "
            + briefName.get()
            + ", line "
            + line.getAsInt()
            + "."
        : "The brief says nothing of " + field + "; this is what applies when it is silent.";
  }

  private void possible(Composed composed) {
    Agenda with = composed.agenda();
    text(title + " is possible. In the best agenda that has it, compared with this one:");
    Map<String, Activity> old = byId(agenda);
    Map<String, Activity> after = byId(with);
    for (Activity activity : with.activities()) {
      String name = Words.quoted(activity.title());
      Activity was = old.get(activity.exercise());
      if (was == null) {
        item(name + length(activity) + " comes in " + at(activity));
      } else if (!was.start().equals(activity.start())) {
        item(
            name
                + " moves from "
                + clock().at(was.start())
                + " to "
                + clock().at(activity.start())
                + lasts(was, activity));
      } else if (!was.length().equals(activity.length())) {
        item(name + " stays " + at(activity) + lasts(was, activity));
      }
    }
    for (Activity activity : agenda.activities()) {
      if (!after.containsKey(activity.exercise())) {
        item(Words.quoted(activity.title()) + length(activity) + " goes, " + at(activity));
      }
    }
    String causes =
        CostWords.causes(
            before,
            new CostWords.Side(with.figures(), composed.prices()),
            composed.instance().weights(),
            this::title);
    text(
        "In all it is "
            + CostWords.verdict(before.figures().cost(), with.figures().cost())
            + (causes.isEmpty() ? "." : ": " + causes + "."));
  }

  private static String lasts(Activity was, Activity is) {
    return was.length().equals(is.length())
        ? ""
        : " and lasts " + Words.time(is.length()) + " instead of " + Words.time(was.length());
  }

  private String title(String id) {
    return Words.quoted(catalog.exercise(id).map(Exercise::title).orElse(id));
  }

  private static String length(Activity activity) {
    return " (" + Words.time(activity.length()) + ")";
  }

  private String at(Activity activity) {
    return clock().said(activity.start());
  }

  private Clock clock() {
    return new Clock(agenda.start());
  }

  private static Map<String, Activity> byId(Agenda agenda) {
    Map<String, Activity> byId = new HashMap<>();
    agenda.activities().forEach(activity -> byId.put(activity.exercise(), activity));
    return byId;
  }

  private void item(String text) {
    lines.addAll(Wrap.hanging("- ", text, width));
  }

  private void text(String text) {
    lines.addAll(Wrap.lines(text, width));
  }
}
