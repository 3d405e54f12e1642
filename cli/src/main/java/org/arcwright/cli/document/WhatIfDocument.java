package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.compose.Parameter;
import org.arcwright.compose.Sweep;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.WhatIf.Flip;
import org.arcwright.compose.WhatIf.Row;

/** How the best agenda changes while one figure of a brief is varied, as a table and in words. */
public final class WhatIfDocument {
  private static final String GAP = "  ";
  private static final int POINTS = 7;
  private static final int WORK = 10;
  private static final int BREAKS = 6;
  private static final int FIT = 10;

  /** More at once nobody keeps in mind. */
  private static final int MOST_TITLES = 4;

  /** A line this wide has room for how well the energy fits. */
  private static final int ROOMY = 72;

  private final WhatIf.Answer answer;
  private final Parameter parameter;
  private final List<Flip> flips;
  private final Style style;
  private final int width;
  private final int values;
  private final List<String> lines = new ArrayList<>();

  private WhatIfDocument(WhatIf.Answer answer, Style style, int width) {
    this.answer = answer;
    this.parameter = answer.sweep().parameter();
    this.flips = answer.flips();
    this.style = style;
    this.width = width;
    this.values =
        Math.max(
            name().length(),
            answer.rows().stream().mapToInt(row -> marked(row).length()).max().orElse(0));
  }

  /**
   * The table, what changes where, and what the figures mean.
   *
   * @param width of a line in characters, 60 or more
   */
  public static String text(WhatIf.Answer answer, Brief brief, Style style, int width) {
    WhatIfDocument document = new WhatIfDocument(answer, style, width);
    document.write(brief);
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  private void write(Brief brief) {
    for (String line : Wrap.lines(brief.title(), width)) {
      lines.add(style.heading(line));
    }
    lines.addAll(Wrap.lines(question(), width));
    lines.add("");
    lines.add(style.heading(row(name(), "points", "work", "breaks", "energy fit", "exercises")));
    answer.rows().forEach(this::row);
    lines.add("");
    key().forEach(text -> lines.addAll(Wrap.lines(text, width)));
    if (answer.rows().stream().anyMatch(Row.Best.class::isInstance)) {
      flips();
      lines.add("");
      lines.addAll(Wrap.lines(summary(), width));
    }
  }

  private String question() {
    Sweep sweep = answer.sweep();
    String range = value(sweep.from()) + " to " + value(sweep.to());
    return switch (parameter) {
      case CAP -> "What if there were more or less time: " + range + "?";
      case PEOPLE ->
          "What if more or fewer came: " + sweep.from() + " to " + value(sweep.to()) + "?";
      case BUFFER -> "What if more or less time were kept free at the close: " + range + "?";
      case ENERGY -> "What if it should be livelier or calmer throughout: " + range + "?";
    };
  }

  private String name() {
    return switch (parameter) {
      case CAP -> "time";
      case PEOPLE -> "people";
      case BUFFER -> "kept free";
      case ENERGY -> "energy";
    };
  }

  private String value(int value) {
    return switch (parameter) {
      case CAP -> Words.time(value);
      case PEOPLE -> value == 1 ? "1 person" : Words.grouped(value) + " people";
      case BUFFER -> value + " %";
      case ENERGY ->
          value == 0
              ? "as wished"
              : Words.level(Math.abs(value)) + (value > 0 ? " livelier" : " calmer");
    };
  }

  /** The value, with a star where it is the brief's own. */
  private String marked(Row row) {
    return value(row.value()) + (row.value() == answer.own() ? " *" : "");
  }

  private void row(Row row) {
    String value = marked(row);
    if (row instanceof Row.Best best) {
      Agenda agenda = best.agenda();
      int breaks = agenda.items().size() - agenda.activities().size();
      int work = agenda.activities().stream().mapToInt(a -> Answer.minutes(a.length())).sum();
      lines.add(
          row(
              value,
              (best.proof().best() ? "" : "~") + Words.grouped(best.proof().cost()),
              Words.time(work),
              breaks == 0 ? "none" : String.valueOf(breaks),
              agenda.figures().energyFit() + " %",
              agenda.activities().size() + change(best)));
      return;
    }
    lines.addAll(Wrap.hanging(Wrap.left(value, values) + GAP, instead(row), width));
  }

  private static String instead(Row row) {
    if (row instanceof Row.None none) {
      String reason = none.reasons().stream().findFirst().orElse("no reason is known.");
      return "nothing fits: "
          + reason.substring(0, 1).toLowerCase(Locale.ROOT)
          + reason.substring(1);
    }
    if (row instanceof Row.Refused refused) {
      return "no such brief: " + refused.why();
    }
    return "open: the budget ended before an agenda was found or ruled out.";
  }

  private String row(
      String value, String points, String work, String breaks, String fit, String exercises) {
    return Wrap.left(value, values)
        + GAP
        + Wrap.right(points, POINTS)
        + GAP
        + Wrap.right(work, WORK)
        + GAP
        + Wrap.right(breaks, BREAKS)
        + (width < ROOMY ? "" : GAP + Wrap.right(fit, FIT))
        + GAP
        + exercises;
  }

  private String change(Row.Best best) {
    return flipTo(best)
        .map(
            flip -> {
              List<String> parts = new ArrayList<>();
              if (!flip.comes().isEmpty()) {
                parts.add(flip.comes().size() + " new");
              }
              if (!flip.goes().isEmpty()) {
                parts.add(flip.goes().size() + " gone");
              }
              return ": " + String.join(", ", parts);
            })
        .orElse("");
  }

  private Optional<Flip> flipTo(Row.Best best) {
    return flips.stream().filter(flip -> flip.after().equals(best)).findFirst();
  }

  private List<String> key() {
    List<String> key = new ArrayList<>();
    boolean own = answer.rows().stream().anyMatch(row -> row.value() == answer.own());
    key.add(
        own
            ? "* is what the brief says."
            : parameter == Parameter.ENERGY
                ? "The brief itself is not among these."
                : "The brief itself says " + value(answer.own()) + ".");
    if (answer.rows().stream()
        .anyMatch(row -> row instanceof Row.Best best && !best.proof().best())) {
      key.add("~ is the best found so far, not proven; a larger --budget may find a better one.");
    }
    return key;
  }

  private void flips() {
    lines.add("");
    if (flips.isEmpty()) {
      lines.addAll(
          Wrap.lines(
              "The same exercises serve throughout; at most their lengths and order change.",
              width));
      return;
    }
    lines.add(style.heading("Where other exercises serve better"));
    for (Flip flip : flips) {
      String text =
          Words.sentence(value(flip.after().value()))
              + ": "
              + (flip.comes().isEmpty() ? "" : titles(flip.comes()) + verb(flip.comes(), "come"))
              + (flip.comes().isEmpty() || flip.goes().isEmpty() ? "" : "; ")
              + (flip.goes().isEmpty() ? "" : titles(flip.goes()) + verb(flip.goes(), "go"))
              + ".";
      lines.addAll(Wrap.hanging("- ", text, width));
    }
  }

  /** All by their titles, or the first ones and how many more. */
  private static String titles(List<Activity> activities) {
    List<String> titles = new ArrayList<>();
    int named = activities.size() > MOST_TITLES ? MOST_TITLES - 1 : activities.size();
    activities.subList(0, named).forEach(a -> titles.add(Words.quoted(a.title())));
    if (named < activities.size()) {
      titles.add(Words.count(activities.size() - named, "other", "others"));
    }
    return Words.list(titles);
  }

  private static String verb(List<Activity> subject, String verb) {
    return " " + verb + (subject.size() > 1 ? "" : verb.endsWith("o") ? "es" : "s");
  }

  /** Which value gives up least, and what points are. */
  private String summary() {
    Row.Best least = null;
    for (Row row : answer.rows()) {
      if (row instanceof Row.Best best
          && (least == null || best.proof().cost() < least.proof().cost())) {
        least = best;
      }
    }
    String fewest =
        least == null
            ? ""
            : (parameter == Parameter.ENERGY
                    ? "Least is given up with energy "
                    : "Least is given up at ")
                + value(least.value())
                + " ("
                + Words.grouped(least.proof().cost())
                + " points). ";
    return fewest
        + "Points count what even the best agenda gives up, so fewer are better"
        + (parameter == Parameter.CAP || parameter == Parameter.BUFFER
            ? "; more minutes of work gather more of them."
            : ".");
  }
}
