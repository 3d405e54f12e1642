package org.arcwright.vote;

import java.util.List;
import java.util.stream.Stream;
import org.arcwright.catalog.InvalidValueException;

/**
 * A count and the tie-breaks that followed it, each among those that were level before.
 *
 * @param rounds the count first, then the tie-breaks that were needed
 */
public record Decision(List<Round> rounds) {
  /** One round: what was compared and how it came out. */
  public record Round(Measure measure, Ranking ranking) {}

  /** What a round compares. The higher sum is ahead. */
  public enum Measure {
    /** Points or votes. */
    SUM,
    /** How many ballots gave the option their highest mark. */
    TOP_MARKS,
    /** Pairs won; a level pair is half a win. */
    WINS,
    /** The worst defeat, as the votes behind; 0 for an option that nobody beats. */
    WORST_DEFEAT,
    /** Votes in the round before. */
    FIRST_COUNT
  }

  /** Copies the list; refuses an empty one. */
  public Decision {
    rounds = List.copyOf(rounds);
    if (rounds.isEmpty()) {
      throw new InvalidValueException("rounds", "empty", "a decision starts with a count");
    }
  }

  static Decision of(Measure measure, List<Score> scores) {
    return new Decision(List.of(new Round(measure, Ranking.of(scores))));
  }

  /** Adds a round among those that are level; changes nothing if there is a winner. */
  Decision thenBy(Measure measure, List<Score> scores) {
    if (!(outcome() instanceof Outcome.Tie tie)) {
      return this;
    }
    List<Score> level = scores.stream().filter(s -> tie.options().contains(s.option())).toList();
    return new Decision(
        Stream.concat(rounds.stream(), Stream.of(new Round(measure, Ranking.of(level)))).toList());
  }

  /** The winner, or those level to the last. */
  public Outcome outcome() {
    return rounds.get(rounds.size() - 1).ranking().outcome();
  }
}
