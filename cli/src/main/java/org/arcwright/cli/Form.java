package org.arcwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms in which a command answers. */
enum Form {
  /** For a terminal. */
  TEXT,
  /** For programs. */
  JSON;

  /** Reads the word for a form. */
  static final class Converter implements ITypeConverter<Form> {
    @Override
    public Form convert(String word) {
      return switch (word) {
        case "text" -> TEXT;
        case "json" -> JSON;
        default ->
            throw new TypeConversionException("\"" + word + "\" is none; text or json are right");
      };
    }
  }
}
