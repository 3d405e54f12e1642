package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.page.Markdown;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.search.OptionRule;

/** Options side by side, so that a facilitator can choose. */
public final class OptionsDocument {
  private static final int LABEL = 15;
  private static final String GAP = "  ";

  private final Found found;
  private final List<Answer> answers;
  private final OptionsTable table;
  private final List<String> lines = new ArrayList<>();

  private OptionsDocument(Brief brief, Catalog catalog, Found found) {
    this.found = found;
    this.answers =
        found.options().stream()
            .map(option -> new Answer(brief, catalog, option.composed()))
            .toList();
    this.table = new OptionsTable(found, answers);
  }

  /**
   * The options as text: figures side by side, what sets each apart, and its exercises.
   *
   * @param width of a line in characters, 60 or more
   */
  public static String text(
      Brief brief, Catalog catalog, Found found, Marks marks, Style style, int width) {
    OptionsDocument document = new OptionsDocument(brief, catalog, found);
    document.write(marks, style, width);
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  /** The options in Markdown: side by side first, then each in full. */
  public static String markdown(Brief brief, Catalog catalog, Found found) {
    OptionsDocument document = new OptionsDocument(brief, catalog, found);
    document.writeMarkdown();
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  private void write(Marks marks, Style style, int width) {
    Answer best = answers.get(0);
    for (String line : Wrap.lines(best.agenda().title(), width)) {
      lines.add(style.heading(line));
    }
    lines.addAll(Wrap.lines(String.join(", ", Particulars.of(best, marks.dash())), width));
    lines.add("");
    int column = (width - LABEL) / answers.size() - GAP.length();
    List<String> numbers = new ArrayList<>();
    for (int i = 1; i <= answers.size(); i++) {
      numbers.add(String.valueOf(i));
    }
    int heading = lines.size();
    row(new OptionsTable.Row("option", numbers), column);
    lines.set(heading, style.heading(lines.get(heading)));
    table.rows().forEach(row -> row(row, column));
    for (int i = 0; i < answers.size(); i++) {
      lines.add("");
      lines.add(style.heading("Option " + (i + 1)));
      lines.addAll(Wrap.lines(Difference.sentence(found.options(), answers, i), width));
      exercises(answers.get(i), marks, width);
    }
    lines.add("");
    lines.addAll(Wrap.lines(end(), width));
    lines.addAll(
        Wrap.lines(
            "Each in full, to read or to send on: --out options.md writes them all.", width));
  }

  private void row(OptionsTable.Row row, int column) {
    List<List<String>> cells = new ArrayList<>();
    int height = 1;
    for (String cell : row.cells()) {
      List<String> wrapped = Wrap.lines(cell, column);
      cells.add(wrapped);
      height = Math.max(height, wrapped.size());
    }
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder(Wrap.left(i == 0 ? row.label() : "", LABEL));
      for (List<String> cell : cells) {
        line.append(GAP).append(Wrap.left(i < cell.size() ? cell.get(i) : "", column));
      }
      lines.add(line.toString().stripTrailing());
    }
  }

  private void exercises(Answer answer, Marks marks, int width) {
    int number = 0;
    for (Activity activity : answer.agenda().activities()) {
      String before =
          GAP
              + Wrap.right(answer.clock().at(activity.start()), 5)
              + Wrap.right(String.valueOf(Answer.minutes(activity.length())), 5)
              + Wrap.right(String.valueOf(++number), 4)
              + " "
              + marks.fill(activity.kind())
              + " ";
      String what = activity.title() + " (" + Words.format(activity.format()) + ")";
      lines.addAll(Wrap.hanging(before, what, width));
    }
  }

  private void writeMarkdown() {
    lines.add(
        "# " + Words.sentence(Words.count(answers.size(), "option", "options to choose from")));
    lines.add("");
    StringBuilder head = new StringBuilder("| |");
    StringBuilder rule = new StringBuilder("| --- |");
    for (int i = 1; i <= answers.size(); i++) {
      head.append(" Option ").append(i).append(" |");
      rule.append(" --- |");
    }
    lines.add(head.toString());
    lines.add(rule.toString());
    for (OptionsTable.Row row : table.rows()) {
      lines.add("| " + row.label() + " | " + String.join(" | ", row.cells()) + " |");
    }
    lines.add("");
    for (int i = 0; i < answers.size(); i++) {
      String sentence = Difference.sentence(found.options(), answers, i);
      lines.add("- **Option " + (i + 1) + ".** " + Markdown.escaped(sentence));
    }
    lines.add("");
    lines.add(Markdown.escaped(end()));
    for (int i = 0; i < answers.size(); i++) {
      lines.add("");
      lines.add("---");
      lines.add("");
      lines.add("**Option " + (i + 1) + "**");
      lines.add("");
      lines.add(MarkdownDocument.write(answers.get(i)).stripTrailing());
    }
  }

  /** How sure they are, and why there are no more. */
  private String end() {
    OptionRule rule = found.rule();
    boolean all = found.options().stream().allMatch(o -> o.composed().proof().best());
    String proven =
        (all ? "Proven one by one: " : "Proven one by one, but for the last: ")
            + "of all agendas that use again at most "
            + rule.share()
            + " % of the exercises of every option before, none costs less. None here costs more"
            + " than "
            + rule.within()
            + " % over the first. ";
    return proven + more();
  }

  private String more() {
    return switch (found.end()) {
      case ENOUGH -> "There may be more; ask with --options.";
      case NONE_LEFT ->
          "There are no more: nothing else that fits the brief shares so little. A larger --share"
              + " lets them be more alike.";
      case TOO_DEAR -> "There are no more within that." + dearer();
      case STOPPED -> "The budget ended before more were found; a larger --budget goes on.";
    };
  }

  private String dearer() {
    long best = found.best().proof().cost();
    return found
        .beyond()
        .filter(proof -> best > 0)
        .map(
            proof ->
                " The next would cost "
                    + (proof.best() ? "" : "at most ")
                    + ceil(100 * (proof.cost() - best), best)
                    + " % more than the first; a larger --within lets it in.")
        .orElse(" A larger --within, or a larger --share, lets more in.");
  }

  private static long ceil(long part, long whole) {
    return (part + whole - 1) / whole;
  }
}
