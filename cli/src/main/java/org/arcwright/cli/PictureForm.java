package org.arcwright.cli;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms of what can also be drawn. */
enum PictureForm {
  /** For a terminal. */
  TEXT,
  /** For programs. */
  JSON,
  /** The picture alone. */
  SVG;

  /** The form that a file's name asks for. */
  static Optional<PictureForm> ofFile(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".json")
        ? Optional.of(JSON)
        : lower.endsWith(".svg") ? Optional.of(SVG) : Optional.empty();
  }

  /** Reads the word for a form. */
  static final class Converter implements ITypeConverter<PictureForm> {
    @Override
    public PictureForm convert(String word) {
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
