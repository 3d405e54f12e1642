package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.learn.Learner;
import org.arcwright.learn.Lesson;
import org.arcwright.learn.Lessons;
import org.arcwright.learn.Score;

/** What logs teach about exercises, as text for a terminal. */
public final class LearnPage {
  private static final String UNSCORED =
      "One log cannot be held against others; whether this predicts better is not known.";

  private final Catalog catalog;
  private final Style style;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private LearnPage(Catalog catalog, Style style, int width) {
    this.catalog = catalog;
    this.style = style;
    this.width = width;
  }

  /**
   * Writes it.
   *
   * @param catalog as it was before
   * @param width of a line in characters, 60 or more
   */
  public static String write(Lessons lessons, Catalog catalog, Style style, int width) {
    LearnPage page = new LearnPage(catalog, style, width);
    page.write(lessons);
    return Words.untied(String.join("\n", page.lines)) + "\n";
  }

  private void write(Lessons lessons) {
    List<Lesson> learnt =
        lessons.lessons().stream()
            .filter(Lesson::learnt)
            .sorted(
                Comparator.comparingDouble((Lesson lesson) -> -Math.abs(Math.log(lesson.factor())))
                    .thenComparing(Lesson::exercise))
            .toList();
    int runs = lessons.lessons().stream().mapToInt(Lesson::logs).sum();
    boolean allSimulated = lessons.simulated() > 0 && lessons.simulated() == lessons.logs();
    text(
        Words.sentence(
                Words.count(
                    lessons.logs(),
                    allSimulated ? "simulated log" : "log",
                    allSimulated ? "simulated logs" : "logs"))
            + " with "
            + Words.count(runs, "run of an exercise", "runs of exercises")
            + " that the catalog knows and that were planned and ended; "
            + Words.count(learnt.size(), "exercise is", "exercises are")
            + " there often enough to learn from.");
    if (!learnt.isEmpty()) {
      lines.add("");
      text(
          "How many times as long each takes as the catalog says, and between which bounds that"
              + " lies with four chances in five; then its usual time for so many people. The fewer"
              + " the logs and the wider they spread, the more the catalog keeps its word.");
      lines.add("");
      lines.add(
          style.faint(
              Wrap.right("takes", 7)
                  + Wrap.right("4 chances in 5", 16)
                  + Wrap.right("before", 9)
                  + Wrap.right("now", 8)
                  + Wrap.right("people", 9)
                  + Wrap.right("logs", 6)));
      learnt.forEach(this::row);
    }
    tooFew(lessons.lessons());
    lines.add("");
    text(lessons.score().map(LearnPage::score).orElse(UNSCORED) + simulated(lessons));
  }

  private static String simulated(Lessons lessons) {
    if (lessons.simulated() == 0) {
      return "";
    }
    boolean all = lessons.simulated() == lessons.logs();
    String which =
        all
            ? lessons.logs() == 1 ? "This log is" : "These logs are"
            : Words.sentence(
                Words.count(lessons.simulated(), "of these logs is", "of these logs are"));
    return " "
        + which
        + " simulated, with times drawn by a program: this shows whether learning works, not how"
        + " long your exercises take.";
  }

  private void row(Lesson lesson) {
    Optional<Exercise> exercise = catalog.exercise(lesson.exercise());
    if (exercise.isEmpty()) {
      return;
    }
    int people = exercise.get().nearest(lesson.people());
    String before =
        Wrap.right("x " + two(lesson.factor()), 7)
            + Wrap.right(two(lesson.low()) + " to " + two(lesson.high()), 16)
            + Wrap.right(minutes(lesson.before()), 9)
            + Wrap.right(minutes(lesson.now()), 8)
            + Wrap.right(String.valueOf(people), 9)
            + Wrap.right(String.valueOf(lesson.logs()), 6)
            + "  ";
    lines.addAll(Wrap.hanging(before, exercise.get().title(), Math.max(width, 78)));
  }

  private static String minutes(Duration time) {
    return Math.round(time.toSeconds() / 60.0) + " min";
  }

  private static String two(double factor) {
    return String.format(Locale.ROOT, "%.2f", factor);
  }

  private void tooFew(List<Lesson> lessons) {
    List<String> titles =
        lessons.stream()
            .filter(lesson -> !lesson.learnt())
            .map(
                lesson ->
                    Words.quoted(
                        catalog
                            .exercise(lesson.exercise())
                            .map(Exercise::title)
                            .orElse(lesson.exercise())))
            .toList();
    if (!titles.isEmpty()) {
      lines.add("");
      text(
          "Left as they are, for it takes "
              + Learner.FEWEST
              + " logs so that no single day decides: "
              + Words.list(titles)
              + ".");
    }
  }

  private static String score(Score score) {
    String asBefore = String.format(Locale.ROOT, "%.1f", score.before()) + Words.tied(" min");
    String now = String.format(Locale.ROOT, "%.1f", score.after()) + Words.tied(" min");
    String held =
        "Each log held out and predicted from the others, "
            + Words.count(score.predictions(), "time", "times")
            + " in all: off by "
            + asBefore
            + " with the catalog as it is, by "
            + now
            + " with what was learnt";
    return score.better()
        ? held + ", " + score.lessPercent() + Words.tied(" %") + " less."
        : held + ". That is no better, so keep the catalog as it is and collect more logs.";
  }

  private void text(String text) {
    lines.addAll(Wrap.lines(text, width));
  }
}
