package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
public final class Wrap {
  private Wrap() {}

  /** Where a line may end: not between a number and its per cent sign. */
  private static final String BLANK = " (?!%)";

  /** The words in lines of at most {@code width}; a longer word stands on a line of its own. */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(BLANK, -1)) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** As {@link #lines}, the first line behind {@code first}, all others as far in. */
  public static List<String> hanging(String first, String text, int width) {
    List<String> lines = new ArrayList<>();
    for (String line : lines(text, width - first.length())) {
      lines.add((lines.isEmpty() ? first : " ".repeat(first.length())) + line);
    }
    return lines;
  }

  /** The text and blanks up to {@code width}. */
  static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** Blanks up to {@code width}, then the text. */
  static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
