package org.arcwright.cli;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Word;
import org.arcwright.cli.Interview.Wrong;
import org.arcwright.format.Schema;
import org.arcwright.shelf.ReadAloud;

/** Asks for the steps of an exercise. */
final class StepQuestions {
  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);
  private static final int LONGEST = 1440;

  private final Interview interview;
  private final Duration opening;
  private final SizeRange people;

  /**
   * @param opening what is said to start; it must fit the first step
   * @param people how many the exercise serves
   */
  StepQuestions(Interview interview, String opening, SizeRange people) {
    this.interview = interview;
    this.opening = ReadAloud.time(ReadAloud.words(opening));
    this.people = people;
  }

  /** At least one step. */
  List<Step> ask() {
    List<Step> steps = new ArrayList<>();
    while (true) {
      boolean first = steps.isEmpty();
      String text =
          interview.ask(
              "Step " + (steps.size() + 1) + ", what happens?",
              help("text"),
              first ? "" : Interview.NONE,
              answer -> Checks.text("text", answer, 600));
      if (!first && text.equals(Interview.NONE)) {
        return steps;
      }
      steps.add(step(text, first));
    }
  }

  private Step step(String text, boolean first) {
    Speaker speaker =
        interview.word(
            "  Who speaks",
            help("who"),
            Speaker.class,
            Optional.of(first ? Speaker.FACILITATOR : Speaker.ALL));
    Format format = format();
    Minutes minutes =
        interview.ask(
            "  Minutes: shortest, usual, longest",
            help("minutes"),
            first ? usual() : "3 5 8",
            answer -> minutes(answer, first));
    return interview.ask(
        "  Counted for each (session, person, group, round)",
        help("per"),
        Per.SESSION.word(),
        answer -> counted(answer, text, speaker, format, minutes));
  }

  private static String help(String key) {
    return Schema.EXERCISE.explanation("$defs.step.properties." + key).orElse("");
  }

  private Format format() {
    while (true) {
      Format format =
          interview.word(
              "  How people sit", help("format"), Format.class, Optional.of(Format.PLENARY));
      if (format != Format.PAIRS || people.min() >= 2) {
        return format;
      }
      interview.say("  pairs: a pair needs two, and your exercise starts at one person");
    }
  }

  /** As long as the opening takes to say, and a little more. */
  private String usual() {
    long least = Math.max(1, (opening.toSeconds() + 59) / 60);
    return least + " " + (least + 1) + " " + (least + 2);
  }

  private Minutes minutes(String answer, boolean first) {
    String[] parts = answer.split("[\\s,]+", -1);
    if (parts.length != 3) {
      throw new Wrong(answer + ": three numbers are right, such as 2 3 5");
    }
    Minutes minutes = new Minutes(time(parts[0]), time(parts[1]), time(parts[2]));
    if (first && opening.compareTo(minutes.typical()) > 0) {
      throw new Wrong(
          parts[1]
              + ": to say your opening takes "
              + opening.toSeconds()
              + " seconds, so the usual must be more");
    }
    return minutes;
  }

  private static Duration time(String number) {
    if (!number.matches("\\d{1,4}(\\.\\d{1,2})?")) {
      throw new Wrong(number + ": a number of minutes is right, such as 3 or 0.5");
    }
    BigDecimal seconds = new BigDecimal(number).multiply(SECONDS).stripTrailingZeros();
    if (seconds.scale() > 0 || seconds.longValue() > LONGEST * 60L) {
      throw new Wrong(number + ": whole, half and quarter minutes up to a day are right");
    }
    return Duration.ofSeconds(seconds.longValueExact());
  }

  private Step counted(
      String answer, String text, Speaker speaker, Format format, Minutes minutes) {
    Per per =
        Word.find(Per.class, answer)
            .orElseThrow(() -> new Wrong(answer + ": session, person, group or round is right"));
    int rounds =
        per == Per.ROUND
            ? interview.whole(
                "  How many rounds", help("rounds"), 3, n -> Checks.range("rounds", n, 1, 50))
            : 1;
    return new Step(text, speaker, format, minutes, per, rounds);
  }
}
