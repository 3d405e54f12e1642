package org.arcwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads whole numbers such as {@code 12}. */
final class WholeNumbers implements ITypeConverter<Integer> {
  @Override
  public Integer convert(String text) {
    try {
      return Integer.valueOf(text.strip());
    } catch (NumberFormatException e) {
      throw new TypeConversionException(
          "\"" + text + "\" is no whole number; write digits, such as 3");
    }
  }
}
