package org.arcwright.vote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * Options compared two at a time. The one that beats every other wins (Condorcet, Essai sur
 * l'application de l'analyse, 1785); if there is none, the Smith set holds those in question: the
 * fewest options each of which beats every option outside (Smith 1973). Wins, a level pair being
 * half a win, are Copeland's scores (1951). Time grows with the cube of the options at most.
 *
 * @param options 2 to 500
 * @param over {@code over.get(i).get(j)} people prefer option i to option j; 0 where i is j
 */
public record Pairwise(List<String> options, List<List<Integer>> over) implements Tally {
  /** Two options and how many people prefer which. */
  public record Duel(String first, int forFirst, String second, int forSecond) {}

  /** Refuses a table that is not square, negative counts, and an option against itself. */
  public Pairwise {
    options = Ballots.options(options);
    over = over.stream().map(List::copyOf).toList();
    size("rows", over.size(), options.size());
    for (int i = 0; i < over.size(); i++) {
      size("row of " + options.get(i), over.get(i).size(), options.size());
      for (int j = 0; j < over.size(); j++) {
        String pair = options.get(i) + " over " + options.get(j);
        Checks.range(pair, over.get(i).get(j), 0, i == j ? 0 : Ballots.MOST_BALLOTS);
      }
    }
  }

  private static void size(String what, int size, int right) {
    if (size != right) {
      throw new InvalidValueException(
          what,
          size + " long",
          "the table has a row and a column for each of " + right + " options");
    }
  }

  /**
   * Counts the pairs on ranked ballots; on a ballot with a tie nobody is ahead in that pair.
   *
   * @param ballots one for each person, each with every option
   */
  public static Pairwise of(List<String> options, List<RankedBallot> ballots) {
    List<String> all = Ballots.options(options);
    List<RankedBallot> complete = RankedBallot.complete(ballots, all);
    int[][] over = new int[all.size()][all.size()];
    for (RankedBallot ballot : complete) {
      int[] places = all.stream().mapToInt(ballot.places()::get).toArray();
      for (int i = 0; i < places.length; i++) {
        for (int j = 0; j < places.length; j++) {
          over[i][j] += places[i] < places[j] ? 1 : 0;
        }
      }
    }
    List<List<Integer>> rows = new ArrayList<>();
    for (int[] row : over) {
      rows.add(IntStream.of(row).boxed().toList());
    }
    return new Pairwise(all, rows);
  }

  /** Every pair once. */
  public List<Duel> duels() {
    List<Duel> duels = new ArrayList<>();
    for (int i = 0; i < options.size(); i++) {
      for (int j = i + 1; j < options.size(); j++) {
        duels.add(new Duel(options.get(i), over.get(i).get(j), options.get(j), over.get(j).get(i)));
      }
    }
    return duels;
  }

  /** By how many more people prefer option i to option j than the other way round. */
  int margin(int i, int j) {
    return over.get(i).get(j) - over.get(j).get(i);
  }

  /** Copeland's scores: for each other option 1 if it is beaten, 1/2 if level, 0 if it wins. */
  @Override
  public List<Score> scores() {
    return IntStream.range(0, options.size())
        .mapToObj(
            i ->
                new Score(
                    options.get(i),
                    others(i)
                        .mapToObj(j -> Fraction.halves(1 + Integer.signum(margin(i, j))))
                        .toList()))
        .toList();
  }

  /** The fewest options each of which beats every option outside, in the order of the options. */
  public List<String> smithSet() {
    return names(new TopCycle(this).smithSet());
  }

  /**
   * A shortest circle in the Smith set: each beats the next, the last beats the first. Empty if no
   * options beat one another in a circle there.
   */
  public Optional<List<String>> cycle() {
    return new TopCycle(this).shortestCycle().map(this::names);
  }

  /**
   * The option that beats every other; a tie if all in the Smith set are level with one another;
   * otherwise no result, with the Smith set.
   */
  @Override
  public Outcome outcome() {
    TopCycle top = new TopCycle(this);
    List<String> smith = names(top.smithSet());
    if (smith.size() == 1) {
      return new Outcome.Winner(smith.get(0));
    }
    if (top.shortestCycle().isPresent()) {
      return new Outcome.NoResult(Outcome.Cause.CYCLE, smith);
    }
    return top.allLevel()
        ? new Outcome.Tie(smith)
        : new Outcome.NoResult(Outcome.Cause.LEVEL_PAIRS, smith);
  }

  /**
   * Most wins, and on a tie the smallest worst defeat. Agrees with {@link #outcome()} wherever that
   * has a winner.
   */
  public Decision decision() {
    return Decision.of(Decision.Measure.WINS, scores())
        .thenBy(Decision.Measure.WORST_DEFEAT, defeats());
  }

  private List<Score> defeats() {
    return IntStream.range(0, options.size())
        .mapToObj(
            i -> {
              int worst = others(i).map(j -> Math.min(0, margin(i, j))).min().orElse(0);
              return Score.of(options.get(i), IntStream.of(worst));
            })
        .toList();
  }

  private IntStream others(int option) {
    return IntStream.range(0, options.size()).filter(j -> j != option);
  }

  private List<String> names(List<Integer> indices) {
    return indices.stream().map(options::get).toList();
  }
}
