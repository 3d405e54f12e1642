package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.cli.page.Block.Note;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.words.Language;

/** What can hurt, and how a person may stay out of it. */
final class Care {
  private Care() {}

  /** What is to be heeded in an exercise and how to opt out; nothing if it has no cautions. */
  static List<Note> notes(Workshop workshop, Exercise exercise) {
    Language language = workshop.language();
    List<String> cautions = exercise.cautions(workshop.agenda().mode());
    if (cautions.isEmpty()) {
      return List.of();
    }
    List<Note> notes = new ArrayList<>();
    notes.add(
        new Note(language.say("label", language.say("care.title")), String.join(" ", cautions)));
    exercise
        .optOut(workshop.agenda().mode())
        .ifPresent(out -> notes.add(new Note(language.say("care.opt-out"), out)));
    return notes;
  }

  private static String said(Workshop workshop, Exercise exercise) {
    List<String> said = new ArrayList<>(exercise.cautions(workshop.agenda().mode()));
    if (!said.isEmpty()) {
      exercise
          .optOut(workshop.agenda().mode())
          .ifPresent(out -> said.add(workshop.language().say("care.opt-out") + " " + out));
    }
    return String.join(" ", said);
  }

  /** The goal's cautions, then those of each exercise after its title. */
  static List<Point> points(Workshop workshop) {
    List<Point> points = new ArrayList<>();
    workshop.goal().map(Goal::cautions).orElse(List.of()).forEach(c -> points.add(Point.of(c)));
    for (Activity activity : workshop.agenda().activities()) {
      workshop
          .exercise(activity)
          .ifPresent(
              exercise -> {
                String said = said(workshop, exercise);
                if (!said.isEmpty()) {
                  points.add(Point.of(workshop.language().say("label", activity.title()), said));
                }
              });
    }
    return points;
  }
}
