package org.arcwright.cli.picture;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Kind;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;

/**
 * The picture of an agenda: time runs left to right, energy bottom to top. The energy wished for is
 * a line; each exercise is a bar as wide as it lasts and as high as its energy; a break is a gap in
 * the ground line, and the closing buffer is open. Kinds are told apart by a word and a line
 * pattern, so that the picture needs no colour.
 */
public final class ArcPicture {
  private static final int WIDTH = 960;
  private static final int LEFT = 76;
  private static final int RIGHT = 944;
  private static final int TOP = 16;
  private static final int CALM = 10;

  /** Least top of the scale, so that calm agendas look calm. */
  private static final int USUAL_TOP = 40;

  /** Room at a bar's foot for its number and its kind. */
  private static final int FOOT = 40;

  private final Agenda agenda;
  private final Language language;
  private final Hours hours;
  private final Size size;
  private final int base;
  private final int top;
  private final TimeScale scale;
  private final Svg svg;
  private final KindPatterns patterns;

  /** How large the picture is, and whether it explains itself. */
  public enum Size {
    /** With a legend. */
    LARGE(300, 58, true),
    /** The first of several below each other: it explains the patterns of all. */
    FIRST(190, 58, true),
    /** One of several below each other. */
    SMALL(190, 30, false);

    private final int base;
    private final int below;
    private final boolean legend;

    Size(int base, int below, boolean legend) {
      this.base = base;
      this.below = below;
      this.legend = legend;
    }
  }

  private ArcPicture(Agenda agenda, Language language, String name, Size size, Duration scale) {
    this.agenda = agenda;
    this.language = language;
    this.hours = new Hours(agenda.start(), language);
    this.size = size;
    this.base = size.base;
    this.scale = new TimeScale(LEFT, RIGHT, Duration.ZERO, scale);
    int highest = USUAL_TOP;
    for (Activity activity : agenda.activities()) {
      highest = Math.max(highest, activity.energy());
    }
    for (int tenths : agenda.curve()) {
      highest = Math.max(highest, tenths);
    }
    this.top = highest;
    this.svg =
        Svg.inPage(
            name,
            WIDTH,
            base + size.below,
            "font-size=\"12\"",
            language.say("arc.title", agenda.title()),
            String.join(" ", ArcWords.of(agenda, language)));
    this.patterns = new KindPatterns(svg, name);
  }

  /**
   * The picture, to stand in a page.
   *
   * @param name the beginning of all ids in it, unlike that of any other picture on the page
   * @param scale the time that the whole width stands for: the agenda's own or a longer one
   */
  public static String draw(
      Agenda agenda, Language language, String name, Size size, Duration scale) {
    ArcPicture picture = new ArcPicture(agenda, language, name, size, scale);
    picture.draw();
    return picture.svg.end();
  }

  private void draw() {
    levels();
    scale.ticks(svg, base + 4, hours);
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Activity activity) {
        bar(activity);
        ground(item.start(), item.end(), "stroke-width=\"3\"");
      } else if (item instanceof Pause pause) {
        String word = language.pause(pause.meal());
        label(pause.start(), pause.end(), base - 6, "arc-soft", "", word);
      }
    }
    Duration close = agenda.end().plus(agenda.buffer());
    if (!agenda.buffer().isZero()) {
      ground(agenda.end(), close, "stroke-width=\"3\" stroke-dasharray=\"3 5\"");
      label(agenda.end(), close, base - 6, "arc-soft", "", language.say("kept.free"));
    }
    curve();
    for (Activity activity : agenda.activities()) {
      foot(activity, ++number);
    }
    if (size.legend) {
      legend();
    }
  }

  private void levels() {
    for (int tenths = CALM; tenths <= top; tenths += 10) {
      int y = (int) Math.round(y(tenths));
      svg.add(
          "<path d=\"M%d %dH%d\" class=\"arc-thin\" stroke=\"#ccc\" stroke-width=\"1\"/>",
          LEFT, y, RIGHT);
      String word = language.level(tenths);
      if (tenths == CALM) {
        word = language.say("arc.calm", word);
      } else if (tenths + 10 > top) {
        word = language.say("arc.energy", word);
      }
      svg.text(LEFT - 10, y + 4, "text-anchor=\"end\" class=\"arc-soft\" fill=\"#444\"", word);
    }
  }

  private void bar(Activity activity) {
    double from = scale.x(activity.start()) + 0.8;
    double to = scale.x(activity.end()) - 0.8;
    double height = y(activity.energy());
    String shape =
        String.format(Locale.ROOT, "M%.1f %dV%.1fH%.1fV%d", from, base, height, to, base);
    svg.add("<path d=\"%s\" class=\"arc-bar\" fill=\"#f4f4f4\"/>", shape);
    svg.add("<path d=\"%s\" fill=\"%s\"/>", shape, patterns.fill(activity.kind()));
    svg.add(
        "<path d=\"%s\" class=\"arc-line\" fill=\"none\" stroke=\"#000\" stroke-width=\"1\"/>",
        shape);
    svg.add(
        "<path d=\"M%.1f %.1fH%.1f\" class=\"arc-line\" stroke=\"#000\" stroke-width=\"3\"/>",
        from - 0.5, height, to + 0.5);
  }

  private void ground(Duration from, Duration to, String look) {
    svg.add(
        "<path d=\"M%.1f %dH%.1f\" class=\"arc-line\" stroke=\"#000\" %s/>",
        scale.x(from), base + 2, scale.x(to), look);
  }

  /** A bar's number and, where there is room, its kind in a word. */
  private void foot(Activity activity, int number) {
    String kind = language.kind(activity.kind());
    boolean room =
        kind.length() * KindPatterns.CHARACTER < scale.width(activity.start(), activity.end()) - 4;
    int y = room ? base - 24 : base - 10;
    String halo =
        "class=\"arc-ink arc-halo\" fill=\"#000\" stroke=\"#fff\" stroke-width=\"5\""
            + " stroke-linejoin=\"round\" paint-order=\"stroke\"";
    label(
        activity.start(),
        activity.end(),
        y,
        "",
        halo + " font-weight=\"bold\" font-size=\"14\"",
        language.say("number", number));
    if (room) {
      label(activity.start(), activity.end(), base - 9, "", halo, kind);
    }
  }

  private void label(Duration from, Duration to, int y, String look, String more, String text) {
    if (text.length() * KindPatterns.CHARACTER > scale.width(from, to) && text.length() > 2) {
      return;
    }
    String style = look.isEmpty() ? more : "class=\"" + look + "\" fill=\"#444\"" + more;
    int middle = (int) Math.round((scale.x(from) + scale.x(to)) / 2);
    svg.text(middle, y, "text-anchor=\"middle\" " + style, text);
  }

  private void curve() {
    List<Integer> curve = agenda.curve();
    if (curve.isEmpty()) {
      return;
    }
    StringBuilder points = new StringBuilder();
    point(points, 0, curve.get(0));
    for (int i = 0; i < curve.size(); i++) {
      point(points, (i + 0.5) * (double) agenda.cap().toMinutes() / curve.size(), curve.get(i));
    }
    point(points, (double) agenda.cap().toMinutes(), curve.get(curve.size() - 1));
    svg.add(
        "<polyline points=\"%s\" class=\"arc-halo\" fill=\"none\" stroke=\"#fff\""
            + " stroke-width=\"6\" stroke-linejoin=\"round\"/>",
        points.toString().strip());
    svg.add(
        "<polyline points=\"%s\" class=\"arc-curve\" fill=\"none\" stroke=\"#000\""
            + " stroke-width=\"2.5\" stroke-linejoin=\"round\" stroke-linecap=\"round\""
            + " stroke-dasharray=\"0.1 6\"/>",
        points.toString().strip());
  }

  private void point(StringBuilder points, double minute, int tenths) {
    points.append(String.format(Locale.ROOT, "%.1f,%.1f ", scale.x(minute), y(tenths)));
  }

  private void legend() {
    double x = LEFT;
    int y = base + 46;
    svg.add(
        "<path d=\"M%.1f %dh24\" class=\"arc-curve\" stroke=\"#000\" stroke-width=\"2.5\""
            + " stroke-linecap=\"round\" stroke-dasharray=\"0.1 6\"/>",
        x, y - 4);
    x = KindPatterns.entry(svg, x + 30, y, language.say("arc.wished"));
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    boolean own = false;
    for (Activity activity : agenda.activities()) {
      activity.kind().ifPresent(kinds::add);
      own |= activity.kind().isEmpty();
    }
    patterns.legend(x, y, kinds, own, language);
  }

  private double y(int tenths) {
    return base - FOOT - (double) (base - FOOT - TOP) * (tenths - CALM) / (top - CALM);
  }
}
