package org.arcwright.record;

import org.arcwright.catalog.Word;

/** How a vote is counted; {@code org.arcwright.vote} does the counting. */
public enum Method implements Word {
  /** Votes that each person spreads over the options. */
  MULTIVOTING("multivoting"),
  /** Each person's best gets most points. */
  RANKED_POINTS("ranked-points"),
  /** A point for each option ranked below. */
  BORDA("borda"),
  /** Options two at a time. */
  CONDORCET("condorcet"),
  /** A yes to as many options as one likes. */
  APPROVAL("approval"),
  /** More than half for one option. */
  MAJORITY("majority"),
  /** Options marked on criteria that weigh differently. */
  WEIGHTED_MATRIX("weighted-matrix"),
  /** Options compared with one known case. */
  DATUM_MATRIX("datum-matrix"),
  /** Yes and no on one proposal. */
  SHOW_OF_HANDS("show-of-hands"),
  /** Fingers on one proposal. */
  FIST_TO_FIVE("fist-to-five"),
  /** A round of objections to one proposal. */
  CONSENT("consent");

  private final String word;

  Method(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
