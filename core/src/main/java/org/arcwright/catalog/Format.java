package org.arcwright.catalog;

/** How people sit together during a step. */
public enum Format implements Word {
  /** Everybody alone. */
  SOLO("solo"),
  /** In twos; an odd person joins a pair. */
  PAIRS("pairs"),
  /** In groups of the exercise's breakout size. */
  SMALL_GROUPS("small-groups"),
  /** All together. */
  PLENARY("plenary");

  private final String word;

  Format(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
