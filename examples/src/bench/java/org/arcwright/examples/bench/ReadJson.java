package org.arcwright.examples.bench;

import java.nio.file.Path;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The least that a program with Jackson can do: read one JSON file. */
public final class ReadJson {
  private ReadJson() {}

  /** Reads the file and says how many fields it has. */
  public static void main(String[] args) {
    JsonNode tree = new JsonMapper().readTree(Path.of(args[0]));
    System.out.println(tree.size());
  }
}
