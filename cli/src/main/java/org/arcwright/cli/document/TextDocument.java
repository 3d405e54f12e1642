package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.cli.words.Language;
import org.arcwright.compose.explain.WhyThis;

/** An agenda as text for a terminal: its picture, its rows, and why it is built so. */
public final class TextDocument {
  private final Answer answer;
  private final Marks marks;
  private final Style style;
  private final int width;
  private final boolean allLeftOut;
  private final List<String> lines = new ArrayList<>();

  private TextDocument(Answer answer, Marks marks, Style style, int width, boolean allLeftOut) {
    this.answer = answer;
    this.marks = marks;
    this.style = style;
    this.width = width;
    this.allLeftOut = allLeftOut;
  }

  /**
   * Writes the document.
   *
   * @param width of a line in characters, 60 or more
   * @param allLeftOut whether to list every exercise that the brief leaves out
   */
  public static String write(
      Answer answer, Marks marks, Style style, int width, boolean allLeftOut) {
    TextDocument document = new TextDocument(answer, marks, style, width, allLeftOut);
    document.write();
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  private void write() {
    for (String line : Wrap.lines(answer.agenda().title(), width)) {
      lines.add(style.heading(line));
    }
    lines.addAll(Wrap.lines(String.join(", ", Particulars.of(answer, marks.dash())), width));
    lines.add("");
    lines.addAll(EnergyStrip.draw(answer.agenda(), marks, width));
    lines.add("");
    lines.addAll(AgendaTable.lines(answer, marks, style, width));
    section("Why it is built so", Why.sentences(answer, Language.ENGLISH));
    answer.why().ifPresent(this::eachExercise);
    section("What was given up for it", givenUp());
    section("Take care", Care.cautions(answer));
    List<String> tools = Care.tools(answer);
    if (!tools.isEmpty()) {
      section("Have at hand", List.of(Words.sentence(Words.list(tools)) + "."));
    }
    lines.add("");
    lines.addAll(Wrap.lines(ProofLine.full(answer), width));
    lines.addAll(
        LeftOutSummary.lines(answer.composed().leftOut(), answer.catalog(), width, allLeftOut));
  }

  private void eachExercise(WhyThis why) {
    lines.add("");
    lines.add(style.heading("Why each exercise is in its place"));
    for (EachExercise.Entry entry : EachExercise.entries(answer, why)) {
      lines.addAll(Wrap.hanging("", entry.heading(), width));
      for (String sentence : entry.sentences()) {
        lines.addAll(Wrap.hanging("   ", sentence, width));
      }
    }
  }

  private List<String> givenUp() {
    List<String> sentences = new ArrayList<>();
    for (GivenUp.Loss loss : GivenUp.losses(answer)) {
      String unit = sentences.isEmpty() ? " (" + GivenUp.unit(answer) + ")" : "";
      sentences.add(
          Words.sentence(loss.text())
              + ": "
              + Words.grouped(loss.points())
              + " points"
              + unit
              + ".");
    }
    return sentences;
  }

  private void section(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    lines.add("");
    for (String line : Wrap.lines(heading, width)) {
      lines.add(style.heading(line));
    }
    for (String sentence : sentences) {
      lines.addAll(Wrap.hanging("- ", sentence, width));
    }
  }
}
