package org.arcwright.cli.words;

import java.util.regex.Pattern;

/**
 * English quotation marks and apostrophes as they are printed. Texts are typed with the straight
 * ones of a keyboard; beside our own sentences they would look like another hand. Takes time linear
 * in the text's length.
 */
public final class Quotes {
  /** A pair that opens where a word may begin and closes where none goes on. */
  private static final Pattern PAIR =
      Pattern.compile("(?<=^|[\\s(\\[–—/])\"([^\"\\s][^\"]*)(?<!\\s)\"(?![\\p{L}\\p{N}])");

  private static final Pattern APOSTROPHE = Pattern.compile("(?<=\\p{L})'(?=\\p{L})");

  private Quotes() {}

  /** The text as it is printed. */
  public static String printed(String text) {
    if (text.indexOf('"') < 0 && text.indexOf('\'') < 0) {
      return text;
    }
    return APOSTROPHE.matcher(PAIR.matcher(text).replaceAll("“$1”")).replaceAll("’");
  }
}
