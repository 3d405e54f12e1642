package org.arcwright.forecast;

import org.arcwright.catalog.Word;

/** What a forecast of one item rests on. */
public enum Basis implements Word {
  /** The exercise's range at this group size. */
  CATALOG("catalog"),
  /** The exercise's range at the nearest group size that it serves. */
  NEAREST_SIZE("nearest-size"),
  /** No exercise of the catalog: a rule of thumb around its planned time. */
  ASSUMED("assumed");

  private final String word;

  Basis(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
