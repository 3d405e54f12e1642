package org.arcwright.format;

import org.arcwright.catalog.InvalidValueException;

/**
 * Something wrong in a file.
 *
 * @param place where
 * @param what is wrong: a field's name, or words such as "unknown key"
 * @param value as it stands there, on one line of at most 60 characters; empty if there is none
 * @param remedy what would be right
 */
public record Problem(Place place, String what, String value, String remedy) {
  /** A value that the model refused after a file was read, without a place in it. */
  public static Problem of(String file, InvalidValueException refused) {
    return new Problem(new Place(file, 0, 0), refused.field(), refused.value(), refused.remedy());
  }

  /** All of it in one line: {@code brief.yaml:5:6: cap, 3 hrs: write it as 3h, 90m or 2h30m}. */
  public String text() {
    return place + ": " + what + (value.isEmpty() ? "" : ", " + value) + ": " + remedy;
  }

  @Override
  public String toString() {
    return text();
  }
}
