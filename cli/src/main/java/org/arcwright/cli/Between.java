package org.arcwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Whole numbers from one to another, both included.
 *
 * @param least the first
 * @param most the last
 */
record Between(int least, int most) {
  private static final int MOST = 9999;

  /** Reads {@code 20}, {@code 15..30}, {@code ..20} or {@code 20..}. */
  static final class Converter implements ITypeConverter<Between> {
    @Override
    public Between convert(String text) {
      int dots = text.indexOf("..");
      if (dots < 0) {
        int number = number(text, text);
        return new Between(number, number);
      }
      String from = text.substring(0, dots);
      String to = text.substring(dots + 2);
      Between range =
          new Between(
              from.isEmpty() ? 0 : number(from, text), to.isEmpty() ? MOST : number(to, text));
      if (range.least > range.most || (from.isEmpty() && to.isEmpty())) {
        throw refuse(text);
      }
      return range;
    }

    private static int number(String digits, String text) {
      if (!digits.matches("\\d{1,4}")) {
        throw refuse(text);
      }
      return Integer.parseInt(digits);
    }

    private static TypeConversionException refuse(String text) {
      return new TypeConversionException(
          "\"" + text + "\" is no number or range; write 20, 15..30, ..20 or 20..");
    }
  }

  @Override
  public String toString() {
    return least == most
        ? String.valueOf(least)
        : (least == 0 ? "" : least) + ".." + (most == MOST ? "" : most);
  }
}
