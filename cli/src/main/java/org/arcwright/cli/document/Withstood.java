package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.standin.ToolVerdict;

/** Says whether an agenda goes on when a tool fails, where a brief was composed for that. */
public final class Withstood {
  private Withstood() {}

  /**
   * All of it, for a terminal.
   *
   * @param composed the agenda that was found
   * @param width of a line in characters, 60 or more
   */
  public static String write(ToolVerdict found, Composed composed, Catalog catalog, int width) {
    List<String> names = found.tools().stream().map(id -> "the " + title(id, catalog)).toList();
    String any = Words.list(names).replace(" and the ", " or the ");
    List<String> lines = new ArrayList<>();
    if (found.reached()) {
      lines.addAll(Wrap.lines(reached(found, composed, any), width));
    } else {
      lines.addAll(Wrap.lines(bare(found, composed, any), width));
      found.reasons().forEach(reason -> lines.addAll(Wrap.hanging("- ", reason, width)));
      lines.addAll(Wrap.lines(ways(found), width));
    }
    return Words.untied(String.join("\n", lines));
  }

  private static String title(String id, Catalog catalog) {
    Tool tool = catalog.tools().get(id);
    return tool == null ? id : tool.title();
  }

  private static String reached(ToolVerdict found, Composed composed, String any) {
    if (found.stops() == 0) {
      return "No exercise here leans on " + any + ". " + price(found, composed);
    }
    return "When "
        + any
        + (found.tools().size() == 1 ? " fails" : " fails, one at a time")
        + ", every exercise here goes on: what leans on it has a stand-in ("
        + Words.count(found.stops(), "case", "cases")
        + "). The command standins names "
        + (found.stops() == 1 ? "it. " : "them. ")
        + price(found, composed);
  }

  private static String price(ToolVerdict found, Composed composed) {
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

  private static String bare(ToolVerdict found, Composed composed, String any) {
    List<String> titles =
        found.bare().stream()
            .map(place -> (Activity) composed.agenda().items().get(place))
            .map(
                activity -> Words.quoted(activity.title()) + " (" + phase(composed, activity) + ")")
            .toList();
    return "No agenda was found in which every exercise goes on when "
        + any
        + " fails"
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

  private static String ways(ToolVerdict found) {
    return (found.complete() ? "Allow" : "Give it more time with --budget, allow")
        + " more tools, take back a wish, add an exercise to the catalog, or compose a brief whose"
        + " tools leave it out from the start. The command standins says how to go on by hand.";
  }
}
