package org.arcwright.cli.document;

import java.util.Locale;

/**
 * A picture in SVG 1.1, on white, with a title and a description that say the same to those who do
 * not see it.
 */
final class Svg {
  private final StringBuilder svg = new StringBuilder();

  /**
   * An empty picture.
   *
   * @param look further attributes of the whole
   */
  Svg(int width, int height, String look, String title, String description) {
    add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " aria-labelledby=\"title text\" font-family=\"sans-serif\" %s>",
        width, height, look);
    add("<title id=\"title\">%s</title>", escaped(title));
    add("<desc id=\"text\">%s</desc>", escaped(description));
    add("<rect width=\"%d\" height=\"%d\" fill=\"#fff\"/>", width, height);
  }

  /** Markup, with numbers as SVG has them wherever people live. */
  void add(String form, Object... values) {
    svg.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  /**
   * A line of text; nothing if there is none.
   *
   * @param how further attributes
   */
  void text(int x, int y, String how, String text) {
    if (!text.isEmpty()) {
      String space = how.isEmpty() ? "" : " ";
      add("<text x=\"%d\" y=\"%d\"%s%s>%s</text>", x, y, space, how, escaped(text));
    }
  }

  /** The picture, complete in itself; ends with a line break. */
  String end() {
    return svg + "</svg>\n";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
