package org.arcwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Briefs for the tests, written where a test wants them. */
final class Briefs {
  /** Five people, an hour and a quarter. */
  static final String SHORT =
      """
      title: Ideas for the open day
      goal: generate-ideas
      people: 5
      mode: remote
      cap: 75m
      start: 2027-03-02 09:00
      zone: Europe/Vienna
      """;

  private Briefs() {}

  static Path write(Path folder, String text) throws IOException {
    return Files.writeString(folder.resolve("brief.yaml"), text);
  }
}
