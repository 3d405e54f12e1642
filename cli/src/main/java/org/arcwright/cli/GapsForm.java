package org.arcwright.cli;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms in which gaps are told. */
enum GapsForm {
  /** For a terminal. */
  TEXT,
  /** For programs. */
  JSON,
  /** A picture. */
  SVG;

  /** The form that a file's name asks for. */
  static Optional<GapsForm> ofFile(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".json")
        ? Optional.of(JSON)
        : lower.endsWith(".svg") ? Optional.of(SVG) : Optional.empty();
  }

  /** Reads the word for a form. */
  static final class Converter implements ITypeConverter<GapsForm> {
    @Override
    public GapsForm convert(String word) {
      return switch (word) {
        case "text" -> TEXT;
        case "json" -> JSON;
        case "svg" -> SVG;
        default ->
            throw new TypeConversionException(
                "\"" + word + "\" is none; text, json or svg are right");
      };
    }
  }
}
