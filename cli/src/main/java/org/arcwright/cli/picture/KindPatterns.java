package org.arcwright.cli.picture;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.cli.words.Language;

/**
 * A pattern for each kind of exercise, and one for what is no exercise of the catalog: one opens as
 * it does, one closes, all differ in grey too.
 */
final class KindPatterns {
  /** How wide a letter is at most, at the size that pictures use. */
  static final double CHARACTER = 6.6;

  private final Svg svg;
  private final String name;

  /**
   * Puts the patterns into the picture.
   *
   * @param name the beginning of all ids in the picture
   */
  KindPatterns(Svg svg, String name) {
    this.svg = svg;
    this.name = name;
    svg.add("<defs>");
    pattern(0, 7, "<circle cx=\"3.5\" cy=\"3.5\" r=\"1.1\" class=\"arc-dots\" fill=\"#555\"/>");
    pattern(1, 8, stroke("M-2 2 2 -2M0 8 8 0M6 10 10 6", "1.1"));
    pattern(2, 6, stroke("M-2 -2 8 8M-2 4 2 8M4 -2 8 2", "1.1"));
    pattern(3, 6, stroke("M0 3H6M3 0V6", "1.1"));
    pattern(4, 5, stroke("M0 2.5H5", "1.1"));
    pattern(5, 12, stroke("M6 3V9M3 6H9", "1"));
    svg.add("</defs>");
  }

  private void pattern(int number, int side, String drawn) {
    svg.add(
        "<pattern id=\"%sp%d\" width=\"%d\" height=\"%d\" patternUnits=\"userSpaceOnUse\">%s"
            + "</pattern>",
        name, number, side, side, drawn);
  }

  private static String stroke(String path, String width) {
    return "<path d=\""
        + path
        + "\" class=\"arc-hatch\" fill=\"none\" stroke=\"#555\" stroke-width=\""
        + width
        + "\"/>";
  }

  /** What a shape of that kind is filled with. */
  String fill(Optional<Kind> kind) {
    return "url(#" + name + "p" + kind.map(Kind::ordinal).orElse(Kind.values().length) + ")";
  }

  /**
   * Says which pattern is which, in a line at {@code y}.
   *
   * @param own whether there is anything that is no exercise of the catalog
   */
  void legend(double left, int y, Set<Kind> kinds, boolean own, Language language) {
    double x = left;
    for (Kind kind : kinds) {
      x = swatch(x, y, Optional.of(kind), language);
    }
    if (own) {
      swatch(x, y, Optional.empty(), language);
    }
  }

  private double swatch(double x, int y, Optional<Kind> kind, Language language) {
    for (String fill : List.of("#f4f4f4\" class=\"arc-bar", fill(kind))) {
      svg.add(
          "<rect x=\"%.1f\" y=\"%d\" width=\"24\" height=\"14\" fill=\"%s\"/>", x, y - 11, fill);
    }
    svg.add(
        "<rect x=\"%.1f\" y=\"%d\" width=\"24\" height=\"14\" class=\"arc-line\" fill=\"none\""
            + " stroke=\"#000\"/>",
        x, y - 11);
    return entry(svg, x + 30, y, language.kind(kind));
  }

  /** A word of a legend; says where the next one begins. */
  static double entry(Svg svg, double x, int y, String word) {
    svg.text((int) Math.round(x), y, "class=\"arc-ink\" fill=\"#000\"", word);
    return x + word.length() * CHARACTER + 22;
  }
}
