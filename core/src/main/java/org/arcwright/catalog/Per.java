package org.arcwright.catalog;

/** What a step's minutes are counted for. */
public enum Per implements Word {
  /** Once. */
  SESSION("session"),
  /** Each person in turn, within the step's format. */
  PERSON("person"),
  /** Each small group in turn. */
  GROUP("group"),
  /** Each round. */
  ROUND("round");

  private final String word;

  Per(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
