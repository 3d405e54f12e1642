package org.arcwright.cli;

import picocli.CommandLine.Option;

/** In which form to answer. */
final class FormOption {
  @Option(
      names = "--format",
      paramLabel = "FORM",
      converter = Form.Converter.class,
      description = "text or json; text if not given")
  private Form form = Form.TEXT;

  boolean isJson() {
    return form == Form.JSON;
  }
}
