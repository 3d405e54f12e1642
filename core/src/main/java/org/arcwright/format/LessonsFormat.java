package org.arcwright.format;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;
import org.arcwright.learn.Lesson;
import org.arcwright.learn.Lessons;
import org.arcwright.learn.Score;

/**
 * What logs teach, in JSON for other programs:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-lessons", "version": 1,
 *   "logs": 8, "simulated": 0,
 *   "score": {"predictions": 59, "before": 6.31, "after": 2.42},
 *   "lessons": [
 *     {"exercise": "dot-voting", "logs": 8, "people": 9,
 *      "factor": 0.6803, "low": 0.6472, "high": 0.7151, "before": 15, "now": 10.25}]
 * }
 * }</pre>
 *
 * <p>A {@code factor} says how many times as long an exercise takes as the catalog says, {@code
 * low} and {@code high} hold it with four chances in five, and {@code before} and {@code now} are
 * its usual minutes for so many people. The {@code score} is missing where there are fewer than two
 * logs. What is written is read as an equal value.
 */
public final class LessonsFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-lessons\"",
          "version: 1",
          "logs: 8",
          "simulated: 0",
          "score",
          "lessons: []");
  private static final Keys SCORE = Keys.of("predictions: 59", "before: 6.31", "after: 2.42");
  private static final Keys LESSON =
      Keys.of(
          "exercise: \"dot-voting\"",
          "logs: 8",
          "people: 9",
          "factor: 0.6803",
          "low: 0.6472",
          "high: 0.7151",
          "before: 15",
          "now: 10.25");

  private LessonsFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Lessons read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(LessonsFormat::lessons);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Lessons read(String name, String text) {
    return Document.json(name, text).read(LessonsFormat::lessons);
  }

  private static Optional<Lessons> lessons(Node node, Faults faults) {
    Fields fields = Fields.of(node, "lessons", KEYS, faults);
    Header.LESSONS.demand(fields, faults);
    int logs = fields.whole("logs");
    int simulated = fields.whole("simulated");
    Optional<Score> score = fields.optional("score").flatMap(n -> score(n, faults));
    List<Lesson> lessons = fields.list("lessons", LessonsFormat::lesson);
    return fields.build(() -> new Lessons(logs, simulated, score, lessons));
  }

  private static Optional<Score> score(Node node, Faults faults) {
    Fields fields = Fields.of(node, "score", SCORE, faults);
    int predictions = fields.whole("predictions");
    double before = number(fields, "before", faults);
    double after = number(fields, "after", faults);
    return fields.build(() -> new Score(predictions, before, after));
  }

  private static Optional<Lesson> lesson(Node node, Faults faults) {
    Fields fields = Fields.of(node, "lesson", LESSON, faults);
    String exercise = fields.text("exercise");
    int logs = fields.whole("logs");
    int people = fields.whole("people");
    double factor = number(fields, "factor", faults);
    double low = number(fields, "low", faults);
    double high = number(fields, "high", faults);
    Optional<Duration> before = time(fields, "before", faults);
    Optional<Duration> now = time(fields, "now", faults);
    return fields.build(
        () ->
            new Lesson(
                exercise,
                logs,
                people,
                factor,
                low,
                high,
                before.orElseThrow(),
                now.orElseThrow()));
  }

  private static Optional<Duration> time(Fields fields, String key, Faults faults) {
    return fields.required(key).flatMap(n -> Times.minutes(n, key, faults));
  }

  private static double number(Fields fields, String key, Faults faults) {
    return fields
        .required(key)
        .flatMap(n -> Values.number(n, key, faults))
        .map(BigDecimal::doubleValue)
        .orElse(0.0);
  }

  /** In JSON. */
  public static String write(Lessons lessons) {
    Branch branch =
        Header.LESSONS.begin().put("logs", lessons.logs()).put("simulated", lessons.simulated());
    lessons.score().ifPresent(score -> branch.put("score", tree(score)));
    return JsonWriter.write(
        branch.put("lessons", Branch.list(lessons.lessons(), LessonsFormat::tree)).end());
  }

  private static Node tree(Score score) {
    return new Branch()
        .put("predictions", score.predictions())
        .put("before", ForecastFormat.number(score.before()))
        .put("after", ForecastFormat.number(score.after()))
        .end();
  }

  private static Node tree(Lesson lesson) {
    return new Branch()
        .put("exercise", lesson.exercise())
        .put("logs", lesson.logs())
        .put("people", lesson.people())
        .put("factor", ForecastFormat.number(lesson.factor()))
        .put("low", ForecastFormat.number(lesson.low()))
        .put("high", ForecastFormat.number(lesson.high()))
        .put("before", Times.minutes(lesson.before()))
        .put("now", Times.minutes(lesson.now()))
        .end();
  }
}
