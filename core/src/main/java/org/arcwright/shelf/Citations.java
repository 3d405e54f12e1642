package org.arcwright.shelf;

import java.util.regex.Pattern;

/** What a citation must say so that others can find the source. */
public final class Citations {
  private static final Pattern YEAR = Pattern.compile("\\b(?:1[5-9]\\d\\d|20\\d\\d)|\\bn\\. ?d\\.");

  private Citations() {}

  /** Whether it names a year, or says that there is none ({@code n.d.}). */
  public static boolean isDated(String citation) {
    return YEAR.matcher(citation).find();
  }
}
