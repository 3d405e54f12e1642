package org.arcwright.cli.picture;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Course;
import org.arcwright.record.Course.Row;
import org.arcwright.record.Course.Span;
import org.arcwright.record.Happening;

/**
 * What was planned above what happened, on one scale of time. Each exercise is a bar as wide as it
 * lasted, a break is a gap in the ground line, and a band leads from where an exercise was to be to
 * where it was. What has no counterpart is dashed. Kinds are told apart by patterns as in {@link
 * ArcPicture}.
 */
public final class CoursePicture {
  private static final int WIDTH = 960;
  private static final int LEFT = 106;
  private static final int RIGHT = 944;
  private static final int BAR = 46;
  private static final int TOP = 22;
  private static final int BETWEEN = 40;

  private final Course course;
  private final Language language;
  private final TimeScale scale;
  private final int held;
  private final Svg svg;
  private final KindPatterns patterns;

  private CoursePicture(Course course, Hours hours, Language language, String name, String title) {
    this.course = course;
    this.language = language;
    this.scale = new TimeScale(LEFT, RIGHT, course.from(), course.to());
    this.held = course.promised().isPresent() ? TOP + BAR + BETWEEN : TOP;
    this.svg =
        Svg.inPage(
            name,
            WIDTH,
            held + BAR + 62,
            "font-size=\"12\"",
            language.say("course.title", title),
            String.join(" ", CourseWords.of(course, hours, language)));
    this.patterns = new KindPatterns(svg, name);
  }

  /**
   * The picture, to stand in a page.
   *
   * @param name the beginning of all ids in it, unlike that of any other picture on the page
   * @param title the workshop's
   */
  public static String draw(
      Course course, Hours hours, Language language, String name, String title) {
    CoursePicture picture = new CoursePicture(course, hours, language, name, title);
    picture.draw(hours);
    return picture.svg.end();
  }

  private void draw(Hours hours) {
    if (course.promised().isPresent()) {
      lane(TOP, language.say("course.planned"));
      course.rows().forEach(this::bands);
      promise(course.promised().get());
    }
    lane(held, language.say("course.happened"));
    for (Row row : course.rows()) {
      row.planned().ifPresent(span -> item(row, span, TOP, row.held().isEmpty()));
      for (Happening happening : row.held()) {
        item(row, span(happening), held, row.planned().isEmpty());
      }
    }
    scale.ticks(svg, held + BAR + 4, hours);
    legend();
  }

  private static Span span(Happening happening) {
    return new Span(happening.from(), happening.to());
  }

  private void lane(int y, String word) {
    svg.text(
        LEFT - 12, y + BAR / 2 + 4, "text-anchor=\"end\" class=\"arc-ink\" fill=\"#000\"", word);
  }

  private void bands(Row row) {
    if (row.pause() || row.planned().isEmpty()) {
      return;
    }
    Span planned = row.planned().get();
    for (Happening happening : row.held()) {
      svg.add(
          "<path d=\"M%.1f %dL%.1f %dH%.1fL%.1f %dZ\" class=\"arc-band\" fill=\"#ddd\""
              + " fill-opacity=\"0.5\"/>",
          scale.x(planned.from()),
          TOP + BAR + 3,
          scale.x(happening.from()),
          held,
          scale.x(happening.to()),
          scale.x(planned.to()),
          TOP + BAR + 3);
    }
  }

  private void promise(Duration at) {
    double x = scale.x(at);
    svg.add(
        "<path d=\"M%.1f %dV%d\" class=\"arc-curve\" fill=\"none\" stroke=\"#000\""
            + " stroke-width=\"2\" stroke-dasharray=\"0.1 5\" stroke-linecap=\"round\"/>",
        x, TOP - 4, held + BAR);
    svg.text(
        (int) Math.round(x),
        TOP - 9,
        "text-anchor=\"end\" class=\"arc-ink\" fill=\"#000\"",
        language.say("course.promised"));
  }

  private void item(Row row, Span span, int y, boolean alone) {
    if (row.pause()) {
      label(span, y + BAR / 2 + 4, "class=\"arc-soft\" fill=\"#444\"", language.pause(row.meal()));
      return;
    }
    double from = scale.x(span.from()) + 0.8;
    double width = Math.max(1, scale.x(span.to()) - 0.8 - from);
    String dashes = alone ? " stroke-dasharray=\"5 4\"" : "";
    svg.add(
        "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" class=\"arc-bar\""
            + " fill=\"#f4f4f4\"/>",
        from, y, width, BAR);
    svg.add(
        "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"%s\"/>",
        from, y, width, BAR, patterns.fill(row.kind()));
    svg.add(
        "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" class=\"arc-line\" fill=\"none\""
            + " stroke=\"#000\"%s/>",
        from, y, width, BAR, dashes);
    svg.add(
        "<path d=\"M%.1f %dh%.1f\" class=\"arc-line\" stroke=\"#000\" stroke-width=\"3\"/>",
        from - 0.8, y + BAR + 1, width + 1.6);
    String halo =
        "class=\"arc-ink arc-halo\" fill=\"#000\" stroke=\"#fff\" stroke-width=\"5\""
            + " stroke-linejoin=\"round\" paint-order=\"stroke\"";
    boolean room = row.title().length() * KindPatterns.CHARACTER < width - 8;
    if (row.number() > 0) {
      label(
          span,
          y + (room ? 19 : BAR / 2 + 5),
          halo + " font-weight=\"bold\" font-size=\"14\"",
          language.say("number", row.number()));
    }
    if (room) {
      label(span, y + (row.number() > 0 ? 36 : BAR / 2 + 4), halo, row.title());
    }
  }

  private void label(Span span, int y, String look, String text) {
    if (text.length() <= 2
        || text.length() * KindPatterns.CHARACTER <= scale.width(span.from(), span.to())) {
      int middle = (int) Math.round((scale.x(span.from()) + scale.x(span.to())) / 2);
      svg.text(middle, y, "text-anchor=\"middle\" " + look, text);
    }
  }

  private void legend() {
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    boolean own = false;
    for (Row row : course.rows()) {
      row.kind().ifPresent(kinds::add);
      own |= !row.pause() && row.kind().equals(Optional.empty());
    }
    patterns.legend(LEFT, held + BAR + 50, kinds, own, language);
  }
}
