package org.arcwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a part such as {@code 50%} or {@code 50}. */
final class PercentConverter implements ITypeConverter<Integer> {
  @Override
  public Integer convert(String text) {
    String digits = text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text;
    if (digits.isEmpty() || digits.length() > 4 || !digits.chars().allMatch(Character::isDigit)) {
      throw new TypeConversionException(
          "\"" + text + "\" is no part; write whole per cent, such as 50%");
    }
    return Integer.parseInt(digits);
  }
}
