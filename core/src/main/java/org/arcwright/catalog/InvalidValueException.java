package org.arcwright.catalog;

import static java.util.Objects.requireNonNull;

/**
 * A value that a model type refuses: which field, what it held, and what would be right. Readers of
 * files catch it and add the place.
 */
public final class InvalidValueException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final String value;
  private final String remedy;

  /**
   * @param field the field's name as it stands in files, such as {@code people}
   * @param value the refused value, as a person wrote it
   * @param remedy what would be right, as a phrase that follows a colon
   */
  public InvalidValueException(String field, Object value, String remedy) {
    super(field + " is " + shorten(String.valueOf(value)) + ": " + remedy);
    this.field = requireNonNull(field);
    this.value = shorten(String.valueOf(value));
    this.remedy = requireNonNull(remedy);
  }

  /** The field's name as it stands in files. */
  public String field() {
    return field;
  }

  /** The refused value, shortened to one line. */
  public String value() {
    return value;
  }

  /** What would be right. */
  public String remedy() {
    return remedy;
  }

  private static String shorten(String text) {
    String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
    return line.length() <= 60 ? line : line.substring(0, 57) + "...";
  }
}
