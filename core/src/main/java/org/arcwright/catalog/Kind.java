package org.arcwright.catalog;

/** What an exercise does to the group's thinking. */
public enum Kind implements Word {
  /** Arrives, warms up, gets to know. */
  ICEBREAKER("icebreaker"),
  /** Opens up: more ideas, more views, more facts. */
  DIVERGENT("divergent"),
  /** Sorts and narrows. */
  CONVERGENT("convergent"),
  /** Settles something: a choice, a plan, a role. */
  DECISION("decision"),
  /** Looks back and takes something along. */
  REFLECTION("reflection");

  private final String word;

  Kind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
