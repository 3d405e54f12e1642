package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Part.Work;

/** A forecast as text for a terminal: its fan, its ends, and where the risk lies. */
public final class ForecastDocument {
  private static final List<Integer> PERCENTS = List.of(50, 80, 95);
  private static final int SURE = 8;
  private static final int BY = 9;
  private static final int FREE = 14;

  private final Forecast forecast;
  private final Agenda agenda;
  private final Optional<Integer> confidence;
  private final Marks marks;
  private final Style style;
  private final int width;
  private final ForecastWords words;
  private final Clock clock;
  private final List<String> lines = new ArrayList<>();

  private ForecastDocument(
      Forecast forecast, Optional<Integer> confidence, Marks marks, Style style, int width) {
    this.forecast = forecast;
    this.agenda = forecast.agenda();
    this.confidence = confidence;
    this.marks = marks;
    this.style = style;
    this.width = width;
    this.words = new ForecastWords(forecast);
    this.clock = new Clock(agenda.start());
  }

  /**
   * Writes the document.
   *
   * @param confidence per cent that the reader wants to be sure, 1 to 99
   * @param width of a line in characters, 60 or more
   */
  public static String write(
      Forecast forecast, Optional<Integer> confidence, Marks marks, Style style, int width) {
    ForecastDocument document = new ForecastDocument(forecast, confidence, marks, style, width);
    document.write();
    return Words.untied(String.join("\n", document.lines)) + "\n";
  }

  private void write() {
    Wrap.lines(agenda.title(), width).forEach(line -> lines.add(style.heading(line)));
    lines.addAll(Wrap.lines(words.onTime() + " " + words.free(confidence), width));
    lines.add("");
    lines.addAll(FanStrip.draw(forecast, marks, width));
    lines.add("");
    ends();
    section("Breaks", words.breaks());
    heading("What each exercise takes");
    exercises();
    section("Where the risk lies", List.of(words.risk()));
    section("What this rests on", words.basis());
  }

  private void ends() {
    lines.add(
        style.faint(
            Wrap.right("how sure", SURE)
                + Wrap.right("done by", BY + 2)
                + Wrap.right("to keep free", FREE + 2)));
    TreeSet<Integer> percents = new TreeSet<>(PERCENTS);
    confidence.ifPresent(percents::add);
    for (int percent : percents) {
      lines.add(
          Wrap.right(percent + " %", SURE)
              + Wrap.right(clock.at(forecast.end(percent)), BY + 2)
              + Wrap.right(Words.time(forecast.buffer(percent)), FREE + 2));
    }
  }

  private void exercises() {
    lines.add(style.faint("  planned  9 days of 10  if held to its plan"));
    int number = 0;
    for (int i = 0; i < agenda.items().size(); i++) {
      if (agenda.items().get(i) instanceof Activity activity
          && forecast.parts().get(i) instanceof Work work) {
        exercise(activity, work, ++number);
      }
    }
  }

  private void exercise(Activity activity, Work work, int number) {
    String took =
        Answer.minutes(work.took().p5())
            + String.valueOf(marks.dash())
            + Answer.minutes(work.took().p95())
            + " min";
    String before =
        Wrap.right(planned(activity), 9)
            + "  "
            + Wrap.left(took, 12)
            + "  "
            + Wrap.left(sooner(work), 19)
            + "  "
            + Wrap.right(String.valueOf(number), 2)
            + " ";
    lines.addAll(Wrap.hanging(before, activity.title(), width));
  }

  private static String planned(AgendaItem item) {
    return Answer.minutes(item.length()) + " min";
  }

  /** What holding it to its plan would do to the end with 80 %. */
  private String sooner(Work work) {
    Duration sooner = forecast.end(80).minus(work.kept().end());
    if (sooner.isZero()) {
      return "the same end";
    }
    return "done "
        + Words.time(Answer.minutes(sooner.abs()))
        + (sooner.isNegative() ? " later" : " sooner");
  }

  private void section(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    heading(heading);
    for (String sentence : sentences) {
      lines.addAll(Wrap.hanging("- ", sentence, width));
    }
  }

  private void heading(String heading) {
    lines.add("");
    lines.add(style.heading(heading));
  }
}
