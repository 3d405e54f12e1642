package org.arcwright.vote;

import java.util.List;

/** A vote among options, counted. */
public sealed interface Tally
    permits Approval,
        Borda,
        DatumMatrix,
        Majority,
        Multivote,
        Pairwise,
        RankedPoints,
        Totals,
        WeightedMatrix {
  /** What is voted on. */
  List<String> options();

  /** What each option got, in the order of the options. */
  List<Score> scores();

  /** The options by their sums. */
  default Ranking ranking() {
    return Ranking.of(scores());
  }

  /** What the vote says by the method's own rule. */
  Outcome outcome();
}
