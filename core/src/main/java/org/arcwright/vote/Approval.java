package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Each person says yes to as many options as they like; most yeses win. After Brams and Fishburn,
 * Approval voting (1978). Time is linear in ballots times options.
 *
 * @param options 2 to 500
 * @param ballots one for each person, the options approved; an empty one is allowed
 */
public record Approval(List<String> options, List<Set<String>> ballots) implements Tally {
  /** Refuses a ballot that names an unknown option. */
  public Approval {
    options = Ballots.options(options);
    Ballots.count(ballots);
    List<Set<String>> copy = new ArrayList<>(ballots.size());
    for (Set<String> ballot : ballots) {
      Ballots.known(Ballots.field(copy.size()), ballot, options);
      copy.add(Collections.unmodifiableSet(new LinkedHashSet<>(ballot)));
    }
    ballots = Collections.unmodifiableList(copy);
  }

  @Override
  public List<Score> scores() {
    return options.stream()
        .map(o -> Score.of(o, ballots.stream().mapToInt(b -> b.contains(o) ? 1 : 0)))
        .toList();
  }

  /** Whether at least half of the ballots approve of the first place. */
  public boolean backedByHalf() {
    Fraction most = ranking().standings().get(0).sum();
    return most.compareTo(Fraction.halves(ballots.size())) >= 0;
  }

  /** The option with most yeses, a tie, or no result if nobody said yes to anything. */
  @Override
  public Outcome outcome() {
    return ballots.stream().allMatch(Set::isEmpty)
        ? new Outcome.NoResult(Outcome.Cause.NO_VOTES, options)
        : ranking().outcome();
  }
}
