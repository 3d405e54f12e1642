package org.arcwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** In which form to answer where the answer can also be drawn, and where to write it. */
final class PictureOption {
  @Option(
      names = "--format",
      paramLabel = "FORM",
      converter = PictureForm.Converter.class,
      description = "text, json or svg; without it, as the name given to --out ends, else text")
  private Optional<PictureForm> format = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write to this file instead of standard output")
  private Optional<Path> out = Optional.empty();

  /** The file to write, if not to standard output. */
  Optional<WholeFile> file() {
    return out.map(WholeFile::to);
  }

  PictureForm form() {
    return format
        .or(() -> out.flatMap(file -> PictureForm.ofFile(file.toString())))
        .orElse(PictureForm.TEXT);
  }
}
