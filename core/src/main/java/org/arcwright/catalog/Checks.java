package org.arcwright.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The checks that the model's constructors share. */
public final class Checks {
  private Checks() {}

  /** Returns the text without outer white space; refuses a blank one or one over the limit. */
  public static String text(String field, String value, int most) {
    String text = value.strip();
    if (text.isEmpty()) {
      throw new InvalidValueException(field, "empty", "it needs a text");
    }
    if (text.length() > most) {
      throw new InvalidValueException(
          field, text, "at most " + most + " characters, here are " + text.length());
    }
    return text;
  }

  /** Returns the id; refuses anything but lower-case letters, digits and single hyphens. */
  public static String id(String field, String value) {
    if (value.length() > 80 || !isId(value)) {
      throw new InvalidValueException(
          field,
          value.isEmpty() ? "empty" : value,
          "an id has at most 80 lower-case letters, digits and single hyphens");
    }
    return value;
  }

  /** A loop, for a regular expression takes its time when a program has just started. */
  private static boolean isId(String value) {
    boolean wordBefore = false;
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      boolean word = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (!word && (c != '-' || !wordBefore)) {
        return false;
      }
      wordBefore = word;
    }
    return wordBefore;
  }

  /** Returns the number; refuses one outside {@code least} to {@code most}. */
  public static int range(String field, int value, int least, int most) {
    if (value < least || value > most) {
      throw new InvalidValueException(
          field, value, "a whole number from " + least + " to " + most + " is right");
    }
    return value;
  }

  /** Returns an immutable set of ids in the order given; refuses one named twice. */
  public static Set<String> ids(String field, Collection<String> values) {
    Set<String> seen = new LinkedHashSet<>();
    for (String value : values) {
      if (!seen.add(id(field, value))) {
        throw new InvalidValueException(field, value, "it stands here twice; name it once");
      }
    }
    return Collections.unmodifiableSet(seen);
  }

  /** Returns an immutable copy without outer white space; refuses a blank line. */
  public static List<String> lines(String field, List<String> values, int mostCharacters) {
    List<String> lines = new ArrayList<>(values.size());
    for (String line : values) {
      lines.add(text(field, line, mostCharacters));
    }
    return Collections.unmodifiableList(lines);
  }
}
