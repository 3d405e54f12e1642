package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * Each person spreads a number of votes over the options; the sums rank them. Covers votes on a
 * long list by thirds and votes with dots. Votes may be left over. Time is linear in ballots times
 * options.
 *
 * @param options 2 to 500
 * @param allotment how many votes each person has
 * @param ballots one for each person, votes by option; an option left out has none
 */
public record Multivote(
    List<String> options, Allotment allotment, List<Map<String, Integer>> ballots)
    implements Tally {
  /**
   * How many votes each person has.
   *
   * @param votes in all, 1 to 1,000
   * @param onOne most on one option, 1 to {@code votes}
   */
  public record Allotment(int votes, int onOne) {
    /** Refuses numbers outside their range. */
    public Allotment {
      Checks.range("votes", votes, 1, 1000);
      Checks.range("votes on one option", onOne, 1, votes);
    }

    /**
     * A third of the items, rounded down, at most 20, and at most 3 on one item: the "N over 3"
     * rule of quality handbooks, such as Tague, The Quality Toolbox (2005).
     *
     * @param items how many items there are, 3 to 500
     */
    public static Allotment ofThird(int items) {
      Checks.range("items", items, 3, Ballots.MOST_OPTIONS);
      int votes = Math.min(items / 3, 20);
      return new Allotment(votes, Math.min(votes, 3));
    }
  }

  /** Refuses an unknown option, negative votes, too many on one option or too many in all. */
  public Multivote {
    options = Ballots.options(options);
    Ballots.count(ballots);
    List<Map<String, Integer>> copy = new ArrayList<>(ballots.size());
    for (Map<String, Integer> ballot : ballots) {
      copy.add(checked(Ballots.field(copy.size()), ballot, options, allotment));
    }
    ballots = Collections.unmodifiableList(copy);
  }

  private static Map<String, Integer> checked(
      String field, Map<String, Integer> ballot, List<String> options, Allotment allotment) {
    Map<String, Integer> copy = new LinkedHashMap<>(ballot);
    Ballots.known(field, copy.keySet(), options);
    copy.forEach(
        (option, votes) -> Checks.range(field + ", " + option, votes, 0, allotment.onOne()));
    long sum = copy.values().stream().mapToLong(Integer::longValue).sum();
    if (sum > allotment.votes()) {
      throw new InvalidValueException(
          field, sum + " votes", "each person has " + allotment.votes() + "; hand it back");
    }
    return Collections.unmodifiableMap(copy);
  }

  @Override
  public List<Score> scores() {
    return options.stream()
        .map(o -> Score.of(o, ballots.stream().mapToInt(b -> b.getOrDefault(o, 0))))
        .toList();
  }

  /** The option with most votes, a tie, or no result if nobody used a vote. */
  @Override
  public Outcome outcome() {
    Ranking ranking = ranking();
    return ranking.standings().get(0).sum().signum() == 0
        ? new Outcome.NoResult(Outcome.Cause.NO_VOTES, options)
        : ranking.outcome();
  }
}
