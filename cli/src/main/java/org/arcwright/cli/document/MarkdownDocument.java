package org.arcwright.cli.document;

import static org.arcwright.cli.page.Markdown.escaped;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Exercise;
import org.arcwright.cli.words.Language;
import org.arcwright.compose.explain.WhyThis;

/** An agenda in Markdown (CommonMark with tables), fit to be sent to a client as it is. */
public final class MarkdownDocument {
  private static final char DASH = Marks.UNICODE.dash();

  /** Columns of the picture: what a page of ordinary width shows in a fixed-width font. */
  private static final int PICTURE_WIDTH = 78;

  private final Answer answer;
  private final Agenda agenda;
  private final List<String> lines = new ArrayList<>();

  private MarkdownDocument(Answer answer) {
    this.answer = answer;
    this.agenda = answer.agenda();
  }

  /** Writes the document. */
  public static String write(Answer answer) {
    MarkdownDocument document = new MarkdownDocument(answer);
    document.write();
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  private void write() {
    lines.add("# " + escaped(agenda.title()));
    lines.add("");
    lines.add(escaped(String.join(", ", Particulars.of(answer, DASH))));
    lines.add("");
    table();
    lines.add("");
    lines.add("```text");
    lines.addAll(EnergyStrip.draw(agenda, Marks.UNICODE, PICTURE_WIDTH));
    lines.add("```");
    section("Why it is built so", Why.sentences(answer, Language.ENGLISH));
    answer.why().ifPresent(this::eachExercise);
    section("Take care", Care.cautions(answer));
    List<String> tools = Care.tools(answer);
    if (!tools.isEmpty()) {
      section("Have at hand", List.of(Words.sentence(Words.list(tools)) + "."));
    }
    lines.add("");
    lines.add(escaped(ProofLine.plain(answer)));
  }

  private void eachExercise(WhyThis why) {
    lines.add("");
    lines.add("## Why each exercise is in its place");
    for (EachExercise.Entry entry : EachExercise.entries(answer, why)) {
      lines.add("");
      lines.add("**" + escaped(entry.heading()) + "**");
      lines.add("");
      entry.sentences().forEach(sentence -> lines.add("- " + escaped(sentence)));
    }
  }

  private void table() {
    lines.add("| | Time | Min | What | Kind | Format |");
    lines.add("| --- | --- | ---: | --- | --- | --- |");
    String phase = "";
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Activity activity) {
        if (!activity.phase().equals(phase)) {
          phase = activity.phase();
          row("", "", "", "**" + escaped(answer.phaseTitle(phase)) + "**", "", "");
        }
        activity(activity, ++number);
      } else if (item instanceof Pause pause) {
        timed(pause.start(), pause.end(), "", pause.meal() ? "*Meal*" : "*Break*", "", "");
      }
    }
    Duration close = agenda.end().plus(agenda.buffer());
    if (!agenda.buffer().isZero()) {
      timed(agenda.end(), close, "", "*Kept free for what runs over*", "", "");
    }
    if (answer.idleMinutes() > 0) {
      timed(close, Duration.ofMinutes(answer.instance().cap()), "", "*Left over*", "", "");
    }
  }

  private void activity(Activity activity, int number) {
    String purpose =
        answer
            .exercise(activity)
            .map(Exercise::purpose)
            .map(text -> "<br>" + escaped(text))
            .orElse("");
    timed(
        activity.start(),
        activity.end(),
        String.valueOf(number),
        escaped(activity.title()) + purpose,
        Words.kind(activity),
        Words.format(activity.format()));
  }

  private void timed(
      Duration from, Duration to, String number, String what, String kind, String format) {
    String time = answer.clock().at(from) + DASH + answer.clock().at(to);
    row(number, time, String.valueOf(to.minus(from).toMinutes()), what, kind, format);
  }

  private void row(String... cells) {
    StringBuilder row = new StringBuilder("|");
    for (String cell : cells) {
      row.append(cell.isEmpty() ? " |" : " " + cell + " |");
    }
    lines.add(row.toString());
  }

  private void section(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("## " + heading);
    lines.add("");
    for (String sentence : sentences) {
      lines.add("- " + escaped(sentence));
    }
  }
}
