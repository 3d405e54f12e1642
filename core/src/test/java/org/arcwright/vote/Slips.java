package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Short ways to write ballots in tests. */
final class Slips {
  private Slips() {}

  /** Reads {@code A > B = C}. */
  static RankedBallot order(String text) {
    return new RankedBallot(
        Arrays.stream(text.split(" > ")).map(tier -> List.of(tier.split(" = "))).toList());
  }

  /** Ballots in bulk: {@code 42, "A > B", 58, "B > A"}. */
  static List<RankedBallot> orders(Object... countsAndOrders) {
    List<RankedBallot> ballots = new ArrayList<>();
    for (int i = 0; i < countsAndOrders.length; i += 2) {
      ballots.addAll(
          Collections.nCopies((int) countsAndOrders[i], order((String) countsAndOrders[i + 1])));
    }
    return ballots;
  }

  static Outcome winner(String option) {
    return new Outcome.Winner(option);
  }

  static Outcome tie(String... options) {
    return new Outcome.Tie(List.of(options));
  }

  static Outcome none(Outcome.Cause cause, String... options) {
    return new Outcome.NoResult(cause, List.of(options));
  }

  /** The sum of each option, as text, in the order of the tally. */
  static List<String> sums(Tally tally) {
    return tally.scores().stream().map(score -> score.sum().toString()).toList();
  }

  /**
   * The election of a capital for Tennessee, in hundredths of the voters. Read on electowiki.org,
   * "Effects of different voting systems under similar circumstances"; the orders also on
   * fact-index.com, "Coombs' method".
   */
  static final class Tennessee {
    static final List<String> CITIES = List.of("Memphis", "Nashville", "Chattanooga", "Knoxville");
    static final List<RankedBallot> BALLOTS =
        orders(
            42, "Memphis > Nashville > Chattanooga > Knoxville",
            26, "Nashville > Chattanooga > Knoxville > Memphis",
            15, "Chattanooga > Knoxville > Nashville > Memphis",
            17, "Knoxville > Chattanooga > Nashville > Memphis");

    private Tennessee() {}
  }
}
