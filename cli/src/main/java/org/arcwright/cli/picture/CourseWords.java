package org.arcwright.cli.picture;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Course;
import org.arcwright.record.Course.Row;

/** Says how a day went beside its plan. */
public final class CourseWords {
  private CourseWords() {}

  /** A sentence for each thing that the picture shows. */
  static List<String> of(Course course, Hours hours, Language language) {
    List<String> sentences = new ArrayList<>();
    sentences.add(language.say("course.axes", hours.at(course.from()), hours.at(course.to())));
    for (Row row : course.rows()) {
      String key =
          row.planned().isEmpty()
              ? "course.row.unplanned"
              : row.held().isEmpty() ? "course.row.left-out" : "course.row";
      sentences.add(
          language.say(
              key,
              title(row, language),
              planned(row, hours, language),
              held(row, hours, language)));
    }
    ended(course, hours, language).ifPresent(sentences::add);
    return sentences;
  }

  /** What it is, with its number in the agenda if it has one. */
  public static String title(Row row, Language language) {
    if (row.pause()) {
      return language.capital(language.pause(row.meal()));
    }
    return row.number() == 0
        ? row.title()
        : language.say("agenda.numbered", row.number(), row.title());
  }

  /** When it was to be. */
  public static String planned(Row row, Hours hours, Language language) {
    return row.planned()
        .map(span -> hours.span(span.from(), span.to()))
        .orElseGet(() -> language.say("course.unplanned"));
  }

  /** When it was. */
  public static String held(Row row, Hours hours, Language language) {
    return row.held().isEmpty()
        ? language.say("course.left-out")
        : language.list(
            row.held().stream().map(held -> hours.span(held.from(), held.to())).toList());
  }

  /** How much longer or shorter it took; empty if that has no sense. */
  public static String longer(Row row, Language language) {
    return row.longer()
        .map(more -> say("course.longer", "course.shorter", "course.as-planned", more, language))
        .orElse("");
  }

  private static String say(
      String over, String under, String same, Duration more, Language language) {
    return more.isZero()
        ? language.say(same)
        : language.say(more.isNegative() ? under : over, language.time(more.abs()));
  }

  /** When it was to end, and when it did. */
  public static Optional<String> ended(Course course, Hours hours, Language language) {
    return course
        .late()
        .map(
            late -> {
              String latest = hours.at(course.promised().orElseThrow());
              String end = hours.at(course.ended().orElseThrow());
              return late.isZero()
                  ? language.say("course.on-time", end)
                  : language.say(
                      late.isNegative() ? "course.early" : "course.late",
                      latest,
                      end,
                      language.time(late.abs()));
            });
  }
}
