package org.arcwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads how sure somebody wants to be, such as {@code 90%}. */
final class Percents implements ITypeConverter<Integer> {
  @Override
  public Integer convert(String text) {
    String digits = text.endsWith("%") ? text.substring(0, text.length() - 1) : text;
    if (!digits.matches("[1-9]\\d?")) {
      throw new TypeConversionException(
          "\"" + text + "\" is none; write whole per cent from 1% to 99%, such as 90%");
    }
    return Integer.valueOf(digits);
  }
}
