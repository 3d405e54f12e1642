package org.arcwright.cli;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms an agenda can be written in. */
enum Output {
  /** For a terminal. */
  TEXT,
  /** For programs. */
  JSON,
  /** To send on. */
  MARKDOWN,
  /** To look at, to print and to send on. */
  HTML;

  /** The form that a file's name asks for. */
  static Optional<Output> ofFile(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".json")) {
      return Optional.of(JSON);
    }
    if (lower.endsWith(".html") || lower.endsWith(".htm")) {
      return Optional.of(HTML);
    }
    return lower.endsWith(".md") || lower.endsWith(".markdown")
        ? Optional.of(MARKDOWN)
        : Optional.empty();
  }

  /** Reads the word for a form. */
  static final class Converter implements ITypeConverter<Output> {
    @Override
    public Output convert(String word) {
      return switch (word) {
        case "text" -> TEXT;
        case "json" -> JSON;
        case "markdown" -> MARKDOWN;
        case "html" -> HTML;
        default ->
            throw new TypeConversionException(
                "\"" + word + "\" is none; text, json, markdown or html are right");
      };
    }
  }
}
