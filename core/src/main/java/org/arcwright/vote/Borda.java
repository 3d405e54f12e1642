package org.arcwright.vote;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The count of places: on each ballot an option gets a point for each option below it. Level
 * options share the points of their places evenly, which makes half a point for each option they
 * are level with. All points together are voters times n (n - 1) / 2. After Borda, Mémoire sur les
 * élections au scrutin (1781). Time is linear in ballots times options.
 *
 * @param options 2 to 500
 * @param ballots one for each person, each with every option; ties allowed
 */
public record Borda(List<String> options, List<RankedBallot> ballots) implements Tally {
  /** Refuses a ballot that names an unknown option or leaves one out. */
  public Borda {
    options = Ballots.options(options);
    ballots = RankedBallot.complete(ballots, options);
  }

  @Override
  public List<Score> scores() {
    Map<String, List<Fraction>> parts = new HashMap<>();
    for (RankedBallot ballot : ballots) {
      int below = options.size();
      for (List<String> tier : ballot.tiers()) {
        below -= tier.size();
        Fraction points = Fraction.halves(2L * below + tier.size() - 1);
        for (String option : tier) {
          parts.computeIfAbsent(option, o -> new ArrayList<>()).add(points);
        }
      }
    }
    return options.stream().map(o -> new Score(o, parts.getOrDefault(o, List.of()))).toList();
  }

  @Override
  public Outcome outcome() {
    return ranking().outcome();
  }
}
