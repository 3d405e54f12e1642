package org.arcwright.cli.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.cli.words.Quotes;

/**
 * Texts in another language than the page's, such as a catalog's. Wherever one of them stands on a
 * page, alone or within a sentence, the page says which language it is in, so that it is read aloud
 * as it should be. Looking through a text takes time linear in its length.
 */
public final class Foreign {
  /** Where everything is in one language. */
  public static final Foreign NONE = new Foreign("", List.of());

  /** Shorter ones are known only where they stand alone: "board" is a word in other languages. */
  private static final int SHORTEST = 8;

  private final String tag;
  private final Set<String> whole;
  private final Map<String, List<String>> byBeginning = new HashMap<>();

  /**
   * A piece of a text.
   *
   * @param tag of its language; empty for the page's own
   */
  public record Piece(String text, String tag) {}

  /**
   * @param tag of their language, as HTML wants it
   */
  public Foreign(String tag, Collection<String> texts) {
    this.tag = tag;
    this.whole = new HashSet<>(texts);
    for (String text : whole) {
      if (text.length() >= SHORTEST) {
        byBeginning
            .computeIfAbsent(text.substring(0, SHORTEST), start -> new ArrayList<>())
            .add(text);
      }
    }
    Comparator<String> longestFirst = Comparator.comparing(String::length).reversed();
    byBeginning.values().forEach(same -> same.sort(longestFirst));
  }

  /** The text in pieces, each in one language. */
  public List<Piece> pieces(String text) {
    if (whole.contains(text)) {
      return List.of(piece(text, tag));
    }
    List<Piece> pieces = new ArrayList<>();
    int done = 0;
    for (int i = 0; i + SHORTEST <= text.length() && !byBeginning.isEmpty(); i++) {
      int end = end(text, i);
      if (end > i) {
        if (i > done) {
          pieces.add(piece(text.substring(done, i), ""));
        }
        pieces.add(piece(text.substring(i, end), tag));
        done = end;
        i = end - 1;
      }
    }
    if (done < text.length() || pieces.isEmpty()) {
      pieces.add(piece(text.substring(done), ""));
    }
    return pieces;
  }

  /** What is in English, alone or on a page that is, gets the quotation marks of print. */
  private Piece piece(String text, String language) {
    return new Piece(language.equals(tag) ? Quotes.printed(text) : text, language);
  }

  /** Where a foreign text that begins there ends; there itself if none does. */
  private int end(String text, int begin) {
    if (begin > 0 && Character.isLetterOrDigit(text.charAt(begin - 1))) {
      return begin;
    }
    String start = text.substring(begin, begin + SHORTEST);
    for (String candidate : byBeginning.getOrDefault(start, List.of())) {
      int end = begin + candidate.length();
      boolean wordEnds = end >= text.length() || !Character.isLetterOrDigit(text.charAt(end));
      if (wordEnds && text.startsWith(candidate, begin)) {
        return end;
      }
    }
    return begin;
  }
}
