package org.arcwright.format.tree;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a quote was left open. A YAML parser reads on to the next quote, lines or pages below, and
 * complains there; a person wants to know where the text began.
 *
 * @param line where the quote stands, from 1
 * @param column where the quote stands, from 1
 */
record OpenQuote(int line, int column) {
  /** A value that begins with a quote and does not end in its line. */
  private static final Pattern OPEN =
      Pattern.compile(
          "(?<before>(?<indent> *)(?:- +)?(?:[\\w-]+: +)?)"
              + "(?:\"(?:[^\"\\\\]|\\\\.)*|'(?:[^']|'')*)");

  private static final Pattern ENTRY = Pattern.compile("(?<indent> *)(?:- .*|[\\w-]+:(?: .*)?)");

  /**
   * The first quote above the given line, or in it, that is still open at the end of its line while
   * the next line is an entry of its own.
   */
  static Optional<OpenQuote> before(int seen, String text) {
    List<String> lines = text.lines().toList();
    for (int i = 0; i < Math.min(seen, lines.size()); i++) {
      Matcher open = OPEN.matcher(lines.get(i));
      if (open.matches()
          && i + 1 < lines.size()
          && isEntry(lines.get(i + 1), open.group("indent").length())) {
        return Optional.of(new OpenQuote(i + 1, open.end("before") + 1));
      }
    }
    return Optional.empty();
  }

  private static boolean isEntry(String line, int indent) {
    Matcher entry = ENTRY.matcher(line);
    return entry.matches() && entry.group("indent").length() <= indent;
  }
}
