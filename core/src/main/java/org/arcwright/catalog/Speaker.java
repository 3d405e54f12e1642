package org.arcwright.catalog;

/** Who speaks during a step. */
public enum Speaker implements Word {
  /** The facilitator alone. */
  FACILITATOR("facilitator"),
  /** One after another. */
  EACH("each"),
  /** Each group among itself or for itself. */
  GROUP("group"),
  /** Whoever wishes to. */
  ALL("all"),
  /** Silence. */
  NOBODY("nobody");

  private final String word;

  Speaker(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
