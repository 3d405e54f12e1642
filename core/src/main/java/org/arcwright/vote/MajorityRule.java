package org.arcwright.vote;

import org.arcwright.catalog.Checks;

/**
 * What counts as more than half. Robert's Rules of Order takes the votes cast, abstentions left
 * out, unless a group's own rules say otherwise.
 *
 * @param base of what more than half is asked
 * @param entitled how many may vote, whether they came or not, 1 to 1,000
 * @param quorum how many have to be present, 0 to {@code entitled}; whoever abstains is present
 */
public record MajorityRule(Base base, int entitled, int quorum) {
  /** Of what more than half is asked. */
  public enum Base {
    /** Of the votes cast; abstentions are no votes. */
    CAST,
    /** Of those present; to abstain has the effect of a no. */
    PRESENT,
    /** Of all who may vote; to stay away has the effect of a no. */
    ENTITLED
  }

  /** Refuses numbers outside their range. */
  public MajorityRule {
    Checks.range("entitled", entitled, 1, Ballots.MOST_BALLOTS);
    Checks.range("quorum", quorum, 0, entitled);
  }

  /** More than half of the votes cast, without a quorum. */
  public static MajorityRule ofVotesCast(int entitled) {
    return new MajorityRule(Base.CAST, entitled, 0);
  }

  /**
   * The fewest votes that are more than half.
   *
   * @param cast votes cast, abstentions left out
   * @param present votes cast and abstentions
   */
  public int needed(int cast, int present) {
    int all =
        switch (base) {
          case CAST -> cast;
          case PRESENT -> present;
          case ENTITLED -> entitled;
        };
    return all / 2 + 1;
  }
}
