package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.standin.Withstanding;

/** Says whether an agenda goes on when a tool fails, where a brief was composed for that. */
public final class Withstood {
  private Withstood() {}

  /**
   * All of it, for a terminal.
   *
   * @param composed the agenda that was found
   * @param tools ids of those that may fail
   * @param width of a line in characters, 60 or more
   */
  public static String write(
      Withstanding.Found found, Composed composed, Set<String> tools, Catalog catalog, int width) {
    List<String> names = tools.stream().map(id -> "the " + title(id, catalog)).toList();
    String without = "without " + Words.list(names).replace(" and the ", " or without the ");
    List<String> lines = new ArrayList<>();
    if (found.reached()) {
      lines.addAll(Wrap.lines(reached(found, composed, without), width));
    } else {
      lines.addAll(Wrap.lines(bare(found, composed, without), width));
      found.reasons().forEach(reason -> lines.addAll(Wrap.hanging("- ", reason, width)));
      lines.addAll(Wrap.lines(ways(found), width));
    }
    return Words.untied(String.join("\n", lines));
  }

  private static String title(String id, Catalog catalog) {
    Tool tool = catalog.tools().get(id);
    return tool == null ? id : tool.title();
  }

  private static String reached(Withstanding.Found found, Composed composed, String without) {
    String all =
        found.stops() == 0
            ? "Every exercise here works " + without + "."
            : "Every exercise here works "
                + without
                + " or has a stand-in that does"
                + (found.stops() == 1 ? " (one has). " : " (" + found.stops() + " have). ")
                + "The command standins names "
                + (found.stops() == 1 ? "it." : "them.");
    return all + " " + price(found, composed);
  }

  private static String price(Withstanding.Found found, Composed composed) {
    if (found.dearer() == 0) {
      return "No agenda for this brief is better.";
    }
    String most =
        "the best of all agendas may cost up to "
            + Words.grouped(found.dearer())
            + " points less than this one's "
            + Words.grouped(composed.proof().cost());
    return found.leftOut() == 0
        ? Words.sentence(most) + ": the time for the search ended."
        : Words.sentence(Words.count(found.leftOut(), "exercise was", "exercises were"))
            + " left out for that; "
            + most
            + ", so that is the most which this can cost you.";
  }

  private static String bare(Withstanding.Found found, Composed composed, String without) {
    List<String> titles =
        found.bare().stream()
            .map(place -> (Activity) composed.agenda().items().get(place))
            .map(
                activity -> Words.quoted(activity.title()) + " (" + phase(composed, activity) + ")")
            .toList();
    return "No agenda was found in which every exercise works "
        + without
        + " or has a stand-in that does"
        + (found.complete() ? "." : "; the time for the search ended.")
        + " In this one nothing stands in for "
        + Words.list(titles)
        + ". "
        + (found.reasons().isEmpty() ? "" : "In the way of doing without:");
  }

  private static String phase(Composed composed, Activity activity) {
    return composed.agenda().phases().stream()
        .filter(phase -> phase.name().equals(activity.phase()))
        .map(Agenda.PhaseTitle::title)
        .findFirst()
        .orElse(activity.phase());
  }

  private static String ways(Withstanding.Found found) {
    return (found.complete() ? "Allow" : "Give it more time with --budget, allow")
        + " more tools, take back a wish, add an exercise to the catalog, or compose a brief whose"
        + " tools leave it out from the start. The command standins says how to go on by hand.";
  }
}
