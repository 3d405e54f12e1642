package org.arcwright.cli.words;

import java.util.Locale;

/** Which of the catalog's short texts a bundle may have in its language. */
public enum Said {
  /** Titles of work products. */
  PRODUCT,
  /** Titles of tools. */
  TOOL,
  /** Titles and purposes of goals. */
  GOAL,
  /** Titles of a goal's phases. */
  PHASE;

  private static final int LONGEST = 40;

  /** The bundle's key, made of the text's beginning. */
  String key(String text) {
    String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String kind = name().toLowerCase(Locale.ROOT);
    return "catalog." + kind + "." + slug.substring(0, Math.min(LONGEST, slug.length()));
  }
}
