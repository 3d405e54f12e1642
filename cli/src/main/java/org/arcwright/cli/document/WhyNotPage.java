package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.Figures;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.explain.WhyNot;

/** Why an exercise is not in an agenda, as text. */
public final class WhyNotPage {
  private final String title;
  private final Agenda agenda;
  private final Figures figures;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param exercise the id asked about
   * @param agenda in which it is missed
   * @param figures of that agenda, counted for the brief
   * @param width of a line in characters
   */
  public WhyNotPage(String exercise, Agenda agenda, Figures figures, Catalog catalog, int width) {
    this.title = Words.quoted(catalog.exercise(exercise).map(Exercise::title).orElse(exercise));
    this.agenda = agenda;
    this.figures = figures;
    this.width = width;
  }

  /**
   * Writes it.
   *
   * @param briefName the brief's file
   * @param line the line in it that rules the exercise out, if one does
   */
  public String write(WhyNot answer, String briefName, OptionalInt line) {
    if (answer instanceof WhyNot.IsIn in) {
      text(title + " is in, " + clock().said(in.activity().start()) + ".");
    } else if (answer instanceof WhyNot.RuledOut ruled) {
      text(title + " is ruled out: " + ruled.leftOut().reason() + ".");
      text(
          line.isPresent()
              ? "That is "
                  + ruled.field()
                  + " in the brief: "
                  + briefName
                  + ", line "
                  + line.getAsInt()
                  + "."
              : "The brief says nothing of "
                  + ruled.field()
                  + "; that is what applies when it is silent.");
      lines.addAll(ClashPage.lines(ruled.clash(), width));
    } else if (answer instanceof WhyNot.Possible possible) {
      possible(possible.with().agenda());
      if (!possible.with().proof().best()) {
        text("A better agenda with it may exist; the budget ended before that was ruled out.");
      }
    } else if (answer instanceof WhyNot.Impossible impossible) {
      text("The brief allows " + title + ", but no agenda fits with it in.");
      lines.addAll(ClashPage.lines(impossible.clash(), width));
    } else {
      text("The budget ended before that was known. Give it more time with --budget.");
    }
    return Words.untied(String.join("\n", lines)) + "\n";
  }

  private void possible(Agenda with) {
    text(title + " is possible. The best agenda that has it, beside this one:");
    Map<String, Activity> before = byId(agenda);
    Map<String, Activity> after = byId(with);
    for (Activity activity : with.activities()) {
      Activity old = before.get(activity.exercise());
      if (old == null) {
        item("comes in " + at(activity) + ": " + Words.quoted(activity.title()) + length(activity));
      } else if (!old.start().equals(activity.start())) {
        item(
            "moves from "
                + clock().at(old.start())
                + " to "
                + clock().at(activity.start())
                + ": "
                + Words.quoted(activity.title())
                + length(activity));
      } else if (!old.length().equals(activity.length())) {
        item(
            "lasts "
                + Words.time(activity.length())
                + " instead of "
                + Words.time(old.length())
                + ": "
                + Words.quoted(activity.title()));
      }
    }
    for (Activity activity : agenda.activities()) {
      if (!after.containsKey(activity.exercise())) {
        item(
            "goes, "
                + clock().said(activity.start())
                + ": "
                + Words.quoted(activity.title())
                + length(activity));
      }
    }
    cost(figures.cost(), with.figures().cost());
  }

  private void cost(Cost before, Cost after) {
    long more = after.total() - before.total();
    text(
        more == 0
            ? "It is as good as this one."
            : "In all it is "
                + (more > 0 ? "worse" : "better")
                + ", as much as "
                + Words.time((int) Math.max(1, Math.abs(more) / 10))
                + " one energy level off the curve. What makes the difference:");
    part("energy off the curve", before.energy(), after.energy());
    part("the exercises themselves", before.exercises(), after.exercises());
    part("exercises shorter or longer than usual", before.lengths(), after.lengths());
    part("phases off their share of the time", before.share(), after.share());
    part("the same format twice in a row", before.monotony(), after.monotony());
    part("stretches of work too short", before.rhythm(), after.rhythm());
    part("breaks", before.pauses(), after.pauses());
    part("time left over", before.idle(), after.idle());
  }

  private void part(String what, long before, long after) {
    if (before != after) {
      item(
          what
              + ": "
              + Words.grouped(Math.abs(after - before))
              + " points "
              + (after > before ? "more" : "less"));
    }
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
