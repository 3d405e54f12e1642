package org.arcwright.brief;

import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Word;

/**
 * The people who take part.
 *
 * @param count 1 to 1,000
 * @param acquaintance how well they know each other
 * @param openness how personal an exercise may get with them: 0 not at all to 3 deeply
 */
public record Group(int count, Acquaintance acquaintance, int openness) {
  /** How well people know each other. */
  public enum Acquaintance implements Word {
    /** They meet for the first time. */
    STRANGERS("strangers"),
    /** Some know some. */
    MIXED("mixed"),
    /** They work together. */
    COLLEAGUES("colleagues");

    private final String word;

    Acquaintance(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Refuses a group of nobody and an openness outside 0 to 3. */
  public Group {
    Checks.range("people", count, 1, 1000);
    Checks.range("openness", openness, 0, 3);
  }
}
