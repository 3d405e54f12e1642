package org.arcwright.vote;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * Each person picks a number of options and gives the best of them the most points, the next one
 * point less, down to one. With five picks this is the vote of the nominal group technique
 * (Delbecq, Van de Ven and Gustafson 1975); with as many picks as options it is a count of places
 * from n down to 1 (Borda 1781). Every ballot holds picks (picks + 1) / 2 points. Time is linear in
 * ballots times options.
 *
 * @param options 2 to 500
 * @param picks how many options each ballot names, 1 to the number of options
 * @param ballots one for each person, the best option first
 */
public record RankedPoints(List<String> options, int picks, List<List<String>> ballots)
    implements Tally {
  /** Refuses a ballot with an unknown, missing, doubled or surplus option. */
  public RankedPoints {
    options = Ballots.options(options);
    Checks.range("picks", picks, 1, options.size());
    Ballots.count(ballots);
    List<List<String>> copy = new ArrayList<>(ballots.size());
    for (List<String> ballot : ballots) {
      String field = Ballots.field(copy.size());
      Ballots.known(field, ballot, options);
      Ballots.once(field, ballot);
      if (ballot.size() != picks) {
        throw new InvalidValueException(
            field, ballot.size() + " options", "it has to name " + picks + "; hand it back");
      }
      copy.add(List.copyOf(ballot));
    }
    ballots = List.copyOf(copy);
  }

  /** How many points every ballot holds, to check the sums by. */
  public int pointsOnBallot() {
    return picks * (picks + 1) / 2;
  }

  @Override
  public List<Score> scores() {
    return options.stream()
        .map(o -> Score.of(o, ballots.stream().mapToInt(ballot -> points(ballot, o))))
        .toList();
  }

  /** How many ballots name the option: two fives are another thing than five twos. */
  public int supporters(String option) {
    Ballots.known("option", List.of(option), options);
    return (int) ballots.stream().filter(ballot -> ballot.contains(option)).count();
  }

  /** The sums, and on a tie the ballots that gave the most points. */
  public Decision decision() {
    List<Score> tops =
        options.stream()
            .map(o -> Score.of(o, ballots.stream().mapToInt(b -> b.get(0).equals(o) ? 1 : 0)))
            .toList();
    return Decision.of(Decision.Measure.SUM, scores()).thenBy(Decision.Measure.TOP_MARKS, tops);
  }

  @Override
  public Outcome outcome() {
    return decision().outcome();
  }

  private int points(List<String> ballot, String option) {
    int at = ballot.indexOf(option);
    return at < 0 ? 0 : picks - at;
  }
}
