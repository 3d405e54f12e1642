package org.arcwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A sound exercise of a trainer's own, to be broken by tests. */
final class Slips {
  static final String ID = "paper-slips";
  static final String TEXT =
      """
      id: paper-slips
      title: Paper slips
      kind: reflection
      purpose: Learn what was useful.
      people: {min: 3, max: 60}
      breakout: {min: 3, max: 5}
      energy: 2
      openness: 0
      needs: [decision]
      yields: [takeaways, feedback]
      opening: Before we part, two questions. What was useful, and what is still unclear?
      steps:
        - text: Say the opening.
          who: facilitator
          format: plenary
          minutes: [1, 1, 1.5]
        - text: In small groups, each reads one line.
          who: each
          format: small-groups
          minutes: [0.5, 0.75, 1]
          per: person
      modes:
        remote: {fit: 2, tools: [call, breakouts], how: Small rooms.}
        in-person: {fit: 3, tools: [paper], how: A slip each.}
        hybrid: {fit: 0, tools: [], how: Slips do not travel.}
      watch: [Praise alone.]
      access: [A line may be dictated.]
      carry-over: A pile of slips.
      source: {mark: published, cite: 'Reed, A. (2001). Slips. Ghent.'}
      """;

  private Slips() {}

  /** Writes a text as an exercise of that name into a catalog folder. */
  static Path write(Path folder, String name, String text) throws IOException {
    Path file = folder.resolve("exercises").resolve(name + ".yaml");
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }
}
