package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Goal;
import org.arcwright.cli.page.Block.Point;

/** What can hurt, and how a person may stay out of it. */
final class Care {
  private Care() {}

  /** The goal's cautions, then those of each exercise after its title. */
  static List<Point> points(Workshop workshop) {
    List<Point> points = new ArrayList<>();
    workshop.goal().map(Goal::cautions).orElse(List.of()).forEach(c -> points.add(Point.of(c)));
    for (Activity activity : workshop.agenda().activities()) {
      workshop
          .exercise(activity)
          .ifPresent(
              exercise -> {
                List<String> said = new ArrayList<>(exercise.cautions(workshop.agenda().mode()));
                if (!said.isEmpty()) {
                  exercise
                      .optOut(workshop.agenda().mode())
                      .ifPresent(out -> said.add(workshop.language().say("care.opt-out", out)));
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
