package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Layers.Origin;
import org.arcwright.catalog.Phase;

/** A goal with its arc, and how many exercises the shelf has for each phase. */
public final class GoalPage {
  private GoalPage() {}

  /** The page as text; ends with a line break. */
  public static String write(
      Goal goal, Origin origin, Catalog catalog, Marks marks, Style style, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(style.heading(goal.title()));
    lines.addAll(Wrap.lines(goal.purpose(), width));
    lines.add("");
    lines.addAll(
        Wrap.lines(
            "It is given: "
                + ShelfWords.products(goal.given(), catalog)
                + ". It leads to: "
                + ShelfWords.products(goal.yields(), catalog)
                + ".",
            width));
    String below =
        origin.below().isEmpty() ? "" : ", in place of the one from " + origin.below().get(0);
    lines.add("Id " + goal.id() + ", from " + origin.layer() + below + ".");
    if (!goal.cautions().isEmpty()) {
      lines.add("");
      lines.add(style.heading("Heed"));
      goal.cautions().forEach(caution -> lines.addAll(Wrap.hanging("  - ", caution, width)));
    }
    lines.add("");
    lines.add(style.heading("Arc"));
    int number = 1;
    for (Phase phase : goal.arc()) {
      String head = "  " + number++ + ". ";
      lines.addAll(Wrap.hanging(head, phase(phase, catalog, marks.dash()), width));
    }
    return Words.untied(String.join("\n", lines) + "\n");
  }

  private static String phase(Phase phase, Catalog catalog, char dash) {
    long fit =
        catalog.exercises().values().stream()
            .filter(exercise -> phase.kinds().contains(exercise.kind()))
            .filter(
                exercise ->
                    phase.yields().isEmpty()
                        || exercise.yields().stream().anyMatch(phase.yields()::contains))
            .count();
    String count =
        phase.fewest() == phase.most()
            ? String.valueOf(phase.most())
            : phase.fewest() + String.valueOf(dash) + phase.most();
    return phase.title()
        + ": "
        + count
        + " of kind "
        + String.join(" or ", phase.kinds().stream().map(Kind::word).toList())
        + ", "
        + phase.share().target()
        + " % of the time ("
        + phase.share().min()
        + dash
        + phase.share().max()
        + "). Leaves "
        + ShelfWords.products(phase.yields(), catalog)
        + "; the shelf has "
        + Words.count((int) fit, "exercise", "exercises")
        + " for it. Its name in a brief: "
        + phase.name()
        + ".";
  }
}
