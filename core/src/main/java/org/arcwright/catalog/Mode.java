package org.arcwright.catalog;

/** Where the people are. */
public enum Mode implements Word {
  /** Everybody at a screen of their own. */
  REMOTE("remote"),
  /** Everybody in one room. */
  IN_PERSON("in-person"),
  /** Some in a room, some at screens. */
  HYBRID("hybrid");

  private final String word;

  Mode(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
