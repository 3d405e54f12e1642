package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.cli.page.Block.Note;
import org.arcwright.cli.page.Block.Point;

/** What can hurt, and how a person may stay out of it. */
final class Care {
  private Care() {}

  /** What is to be heeded in an exercise, if anything is. */
  static Optional<Note> note(Workshop workshop, Exercise exercise) {
    List<String> said = said(workshop, exercise);
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(new Note(workshop.language().say("care.title"), String.join(" ", said)));
  }

  /** The exercise's cautions and the way to opt out; nothing if it has no cautions. */
  private static List<String> said(Workshop workshop, Exercise exercise) {
    List<String> said = new ArrayList<>(exercise.cautions(workshop.agenda().mode()));
    if (!said.isEmpty()) {
      exercise
          .optOut(workshop.agenda().mode())
          .ifPresent(out -> said.add(workshop.language().say("care.opt-out", out)));
    }
    return said;
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
                List<String> said = said(workshop, exercise);
                if (!said.isEmpty()) {
                  points.add(
                      Point.of(
                          workshop.language().say("label", activity.title()),
                          String.join(" ", said)));
                }
              });
    }
    return points;
  }
}
