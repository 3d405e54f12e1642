package org.arcwright.vote;

import java.util.List;
import org.arcwright.catalog.InvalidValueException;

/** What a vote among options says. */
public sealed interface Outcome {
  /** One option is ahead by the method's rule. */
  record Winner(String option) implements Outcome {}

  /**
   * Several options are level in the first place.
   *
   * @param options two or more, in the order of the tally
   */
  record Tie(List<String> options) implements Outcome {
    /** Refuses a tie of fewer than two. */
    public Tie {
      options = List.copyOf(options);
      if (options.size() < 2) {
        throw new InvalidValueException("tie", options, "a tie is between two options or more");
      }
    }
  }

  /**
   * The method gives no answer.
   *
   * @param cause why
   * @param options those still in question, in the order of the tally
   */
  record NoResult(Cause cause, List<String> options) implements Outcome {
    /** Copies the list. */
    public NoResult {
      options = List.copyOf(options);
    }
  }

  /** Why a method gives no answer. */
  enum Cause {
    /** Every ballot is blank. */
    NO_VOTES,
    /** Too few people are present. */
    NO_QUORUM,
    /** No option has more than half; those in question go into a second round. */
    NO_MAJORITY,
    /** Options beat one another in a circle; those in question beat all others. */
    CYCLE,
    /** Nobody beats all others, as some pairs are level; those in question beat all others. */
    LEVEL_PAIRS,
    /** No option has both most pluses and fewest minuses; no other is better than those on both. */
    MIXED
  }
}
