package org.arcwright.cli.picture;

import java.util.Locale;
import org.arcwright.cli.words.Quotes;

/**
 * A picture in SVG 1.1 with a title and a description that say the same to those who do not see it.
 */
public final class Svg {
  private final StringBuilder svg = new StringBuilder();

  /**
   * An empty picture on white, to stand alone.
   *
   * @param look further attributes of the whole
   */
  public Svg(int width, int height, String look, String title, String description) {
    this("", width, height, look, title, description);
    add("<rect width=\"%d\" height=\"%d\" fill=\"#fff\"/>", width, height);
  }

  private Svg(String name, int width, int height, String look, String title, String description) {
    add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " aria-labelledby=\"%stitle %stext\" font-family=\"sans-serif\" %s>",
        width, height, name, name, look);
    add("<title id=\"%stitle\">%s</title>", name, escaped(title));
    add("<desc id=\"%stext\">%s</desc>", name, escaped(description));
  }

  /**
   * An empty picture to stand in a page, whose colours it takes.
   *
   * @param name the beginning of all ids in it, unlike that of any other picture on the page
   * @param look further attributes of the whole
   */
  public static Svg inPage(
      String name, int width, int height, String look, String title, String description) {
    return new Svg(name, width, height, look, title, description);
  }

  /** Markup, with numbers as SVG has them wherever people live. */
  public void add(String form, Object... values) {
    svg.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  /**
   * A line of text; nothing if there is none.
   *
   * @param how further attributes
   */
  public void text(int x, int y, String how, String text) {
    if (!text.isEmpty()) {
      String space = how.isEmpty() ? "" : " ";
      add("<text x=\"%d\" y=\"%d\"%s%s>%s</text>", x, y, space, how, escaped(text));
    }
  }

  /** The picture, complete in itself; ends with a line break. */
  public String end() {
    return svg + "</svg>\n";
  }

  private static String escaped(String text) {
    return Quotes.printed(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
