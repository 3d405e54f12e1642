package org.arcwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file. */
final class Paths implements ITypeConverter<Path> {
  @Override
  public Path convert(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException(
          "\""
              + text
              + "\" is no file name here; one with letters beyond ASCII needs a locale in UTF-8, such"
              + " as LC_ALL=C.UTF-8");
    }
  }
}
