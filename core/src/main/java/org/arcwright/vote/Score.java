package org.arcwright.vote;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What an option got, part by part, so that a report can show the sum.
 *
 * @param option the option
 * @param parts one from each ballot, criterion or opponent, in the order of the tally
 */
public record Score(String option, List<Fraction> parts) {
  /** Copies the list. */
  public Score {
    parts = List.copyOf(parts);
  }

  static Score of(String option, IntStream parts) {
    return new Score(option, parts.mapToObj(Fraction::of).toList());
  }

  /** All parts together. */
  public Fraction sum() {
    return parts.stream().reduce(Fraction.ZERO, Fraction::plus);
  }
}
