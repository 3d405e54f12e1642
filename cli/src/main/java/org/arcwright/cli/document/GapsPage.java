package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Kind;
import org.arcwright.gaps.Demand;
import org.arcwright.gaps.Draft;
import org.arcwright.gaps.Gap;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.ToolSet;

/** Where a shelf is thin: counts in rows, then the gaps with what would fill them. */
public final class GapsPage {
  private static final int MOST_WANTED = 6;

  private final Gaps gaps;
  private final Catalog catalog;
  private final Marks marks;
  private final Style style;
  private final int width;
  private final StringBuilder out = new StringBuilder();

  private GapsPage(Gaps gaps, Catalog catalog, Marks marks, Style style, int width) {
    this.gaps = gaps;
    this.catalog = catalog;
    this.marks = marks;
    this.style = style;
    this.width = width;
  }

  /** The page as text; ends with a line break. */
  public static String write(Gaps gaps, Catalog catalog, Marks marks, Style style, int width) {
    GapsPage page = new GapsPage(gaps, catalog, marks, style, width);
    page.write();
    return Words.untied(page.out.toString());
  }

  private void write() {
    GapsTable.write(gaps, catalog, marks, style, width, out);
    out.append('\n');
    paragraph(GapWords.summary(gaps));
    if (!gaps.gaps().isEmpty()) {
      wanted();
      thinnest();
    }
  }

  private void wanted() {
    List<Demand> demands = gaps.demands();
    if (demands.isEmpty()) {
      return;
    }
    heading("What to write next");
    for (Demand demand : demands.subList(0, Math.min(MOST_WANTED, demands.size()))) {
      String text =
          exercise(demand.kind(), demand.yields(), demand.atMost())
              + ", for "
              + ShelfWords.people(demand.people(), marks.dash())
              + " people: one more agenda in "
              + Words.count(demand.briefs(), "brief", "briefs");
      hanging("  ", Words.sentence(text) + ".");
    }
  }

  /** Gaps that differ in people only, and ask for the same sort of exercises. */
  private record Alike(
      String goal, ToolSet tools, List<Duration> lengths, int agendas, List<String> missing) {}

  private void thinnest() {
    Map<Alike, List<Gap>> groups = new LinkedHashMap<>();
    for (Gap gap : gaps.gaps()) {
      List<String> missing =
          gap.drafts().stream().map(draft -> draft.kind() + " " + draft.yields()).toList();
      Alike alike = new Alike(gap.goal(), gap.tools(), gap.lengths(), gap.agendas(), missing);
      groups.computeIfAbsent(alike, key -> new ArrayList<>()).add(gap);
    }
    heading("The thinnest first");
    groups.forEach(this::gap);
    int shown = gaps.gaps().stream().mapToInt(gap -> gap.lengths().size()).sum();
    int thin = gaps.thin();
    if (shown < thin) {
      paragraph(
          "So much for "
              + Words.grouped(shown)
              + " of "
              + Words.grouped(thin)
              + " thin briefs; --list looks into more.");
    }
  }

  private void gap(Alike alike, List<Gap> group) {
    List<Integer> people = group.stream().map(Gap::people).toList();
    hanging(
        Wrap.right(String.valueOf(alike.agendas()), 3) + "  ",
        alike.goal()
            + ", "
            + GapWords.place(alike.tools(), catalog)
            + ", "
            + GapWords.people(people)
            + ", "
            + GapWords.lengths(alike.lengths()));
    hanging("     ", missing(group));
  }

  private String missing(List<Gap> group) {
    List<Draft> drafts = group.get(0).drafts();
    if (drafts.isEmpty()) {
      return "No exercise would help: there is too little time for the arc of this goal.";
    }
    List<String> words = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      int number = i;
      Duration atMost =
          group.stream()
              .map(gap -> gap.drafts().get(number).atMost())
              .sorted()
              .findFirst()
              .orElseThrow();
      Draft draft = drafts.get(i);
      words.add(
          exercise(draft.kind(), draft.yields(), atMost)
              + (draft.needs().isEmpty()
                  ? ""
                  : " (it may count on " + ShelfWords.products(draft.needs(), catalog) + ")"));
    }
    return drafts.size() == 1
        ? "Missing: " + words.get(0) + "."
        : "Missing, all of them: " + String.join("; ", words) + ".";
  }

  private String exercise(Kind kind, Set<String> yields, Duration atMost) {
    String article = kind == Kind.ICEBREAKER ? "an " : "a ";
    String what = kind == Kind.ICEBREAKER ? "icebreaker" : kind.word() + " exercise";
    return article
        + what
        + " that leaves "
        + ShelfWords.products(yields, catalog)
        + " in "
        + Words.time(atMost)
        + " or less";
  }

  private void heading(String text) {
    out.append('\n').append(style.heading(text)).append('\n');
  }

  private void paragraph(String text) {
    Wrap.lines(text, width).forEach(line -> out.append(line).append('\n'));
  }

  private void hanging(String first, String text) {
    Wrap.hanging(first, text, width).forEach(line -> out.append(line).append('\n'));
  }
}
