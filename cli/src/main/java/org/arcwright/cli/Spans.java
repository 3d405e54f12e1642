package org.arcwright.cli;

import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time budget such as {@code 10s}, {@code 500ms}, {@code 2m} or {@code 1m30s}. */
final class Spans implements ITypeConverter<Duration> {
  private static final Duration LONGEST = Duration.ofHours(24);

  @Override
  public Duration convert(String text) {
    long millis = 0;
    int at = 0;
    while (at < text.length()) {
      int digits = at;
      while (digits < text.length() && isDigit(text.charAt(digits))) {
        digits++;
      }
      int unit = digits;
      while (unit < text.length() && !isDigit(text.charAt(unit))) {
        unit++;
      }
      if (digits == at || digits - at > 9) {
        throw refuse(text);
      }
      millis +=
          Long.parseLong(text.substring(at, digits)) * millis(text.substring(digits, unit), text);
      at = unit;
    }
    if (millis <= 0 || millis > LONGEST.toMillis()) {
      throw refuse(text);
    }
    return Duration.ofMillis(millis);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static long millis(String unit, String text) {
    return switch (unit) {
      case "ms" -> 1;
      case "s" -> 1_000;
      case "m", "min" -> 60_000;
      case "h" -> 3_600_000;
      default -> throw refuse(text);
    };
  }

  private static TypeConversionException refuse(String text) {
    return new TypeConversionException(
        "\"" + text + "\" is no time; write a number with its unit, from 1ms to 24h, such as 10s");
  }
}
