package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Clash.Conflict;
import org.arcwright.compose.explain.Loosening;
import org.arcwright.compose.explain.WayOut;

/** Which wishes clash, and the ways out. */
final class ClashPage {
  private final Clash clash;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ClashPage(Clash clash, int width) {
    this.clash = clash;
    this.width = width;
  }

  static List<String> lines(Clash clash, int width) {
    ClashPage page = new ClashPage(clash, width);
    page.conflicts();
    page.waysOut();
    return page.lines;
  }

  private void conflicts() {
    boolean first = true;
    for (Conflict conflict : clash.conflicts()) {
      lines.add("");
      if (conflict.wishes().isEmpty()) {
        text("Whatever you give up of it, the catalog has no agenda for this goal, held this way.");
        continue;
      }
      text(heading(conflict, first));
      conflict.wishes().forEach(asked -> lines.addAll(Wrap.hanging("- ", asked.text(), width)));
      first = false;
    }
  }

  private String heading(Conflict conflict, boolean first) {
    boolean alone = conflict.wishes().size() == 1;
    if (!first) {
      return alone ? "Nor can this:" : "Nor can these be had together:";
    }
    String these = alone ? "This cannot be had" : "These cannot be had together";
    if (clash.anyOneIsEnough() && !alone) {
      return these + "; take any one of them away, and an agenda fits:";
    }
    return these
        + (conflict.smallest() || alone
            ? ":"
            : " (perhaps fewer of them cannot either; the budget ended before that was known):");
  }

  private void waysOut() {
    if (!clash.waysOut().isEmpty()) {
      lines.add("");
      text(
          clash.waysOut().size() == 1
              ? "The way out:"
              : "Ways out, the one that gives up least first:");
    }
    int number = 0;
    for (WayOut way : clash.waysOut()) {
      wayOut(++number, way);
    }
    if (!clash.complete()) {
      lines.add("");
      text(
          clash.waysOut().isEmpty()
              ? "No way out was found before the budget ended. A larger --budget may find one."
              : "There may be more; the budget ended first. A larger --budget looks further.");
    }
  }

  private void wayOut(int number, WayOut way) {
    String first = Wrap.right(number + ". ", 4);
    String indent = " ".repeat(first.length());
    List<String> texts = way.loosenings().stream().map(Loosening::text).toList();
    boolean lists = texts.size() > 1 && texts.stream().anyMatch(text -> text.contains(":"));
    String what = lists ? String.join("; ", texts) : Words.list(texts);
    String sure = way.least() ? "" : " (perhaps less is enough; the budget ended first)";
    lines.addAll(Wrap.hanging(first, Words.sentence(what) + sure + ".", width));
    lines.addAll(
        Wrap.hanging(indent, "In the brief: " + String.join("; ", BriefChange.of(way)), width));
    lines.addAll(Wrap.hanging(indent, agenda(way.agenda()), width));
  }

  /** The agenda in a line. */
  private static String agenda(Agenda agenda) {
    Clock clock = new Clock(agenda.start());
    List<String> parts = new ArrayList<>();
    for (AgendaItem item : agenda.items()) {
      String what =
          item instanceof Activity activity
              ? activity.title()
              : ((Pause) item).meal() ? "(meal)" : "(break)";
      parts.add(clock.at(item.start()) + " " + what);
    }
    parts.add(clock.at(agenda.end()) + " (close)");
    return "Then: " + String.join(", ", parts);
  }

  private void text(String text) {
    lines.addAll(Wrap.lines(text, width));
  }
}
