package org.arcwright.cli;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms in which a catalog leaves and comes in. */
enum Exchange {
  /** The exercises as a table, for spreadsheets. */
  CSV,
  /** The whole catalog, for programs. */
  JSON;

  /** The form that a file's name says. */
  static Optional<Exchange> ofFile(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".csv")) {
      return Optional.of(CSV);
    }
    return lower.endsWith(".json") ? Optional.of(JSON) : Optional.empty();
  }

  /** Reads the word for a form. */
  static final class Converter implements ITypeConverter<Exchange> {
    @Override
    public Exchange convert(String word) {
      return switch (word) {
        case "csv" -> CSV;
        case "json" -> JSON;
        default ->
            throw new TypeConversionException("\"" + word + "\" is none; csv or json are right");
      };
    }
  }
}
