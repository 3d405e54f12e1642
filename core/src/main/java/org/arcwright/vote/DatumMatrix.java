package org.arcwright.vote;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * Options compared with one known case, the datum, criterion by criterion: +1 better, 0 the same,
 * -1 worse. After Pugh, Concept selection: a method that works (1981). Pluses and minuses are
 * counted apart, as a minus that matters is lost in a sum. Time is linear in the marks; the outcome
 * takes the square of the options at most.
 *
 * @param datum the known case; not among the options
 * @param options 2 to 500
 * @param criteria 1 to 50
 * @param signs {@code signs.get(i).get(k)}, -1 to 1, is how option i compares on criterion k
 */
public record DatumMatrix(
    String datum, List<String> options, List<String> criteria, List<List<Integer>> signs)
    implements Tally {
  /** Refuses a datum that is an option, and a table with a cell missing. */
  public DatumMatrix {
    options = Ballots.options(options);
    datum = Checks.text("datum", datum, 200);
    if (options.contains(datum)) {
      throw new InvalidValueException(
          "datum", datum, "it is what options are compared with; take it off the options");
    }
    criteria = Matrices.criteria(criteria);
    signs = Matrices.cells(options, criteria.size(), signs, -1, 1);
  }

  /** The signs; the sum is pluses less minuses, and the datum's is 0. */
  @Override
  public List<Score> scores() {
    return IntStream.range(0, options.size())
        .mapToObj(i -> Score.of(options.get(i), signs.get(i).stream().mapToInt(Integer::intValue)))
        .toList();
  }

  /** On how many criteria the option is better than the datum. */
  public int pluses(String option) {
    return count(option, 1);
  }

  /** On how many criteria the option is worse than the datum. */
  public int minuses(String option) {
    return count(option, -1);
  }

  /**
   * The option with most pluses that also has fewest minuses, a tie if several are so; otherwise no
   * result, with the options that no other equals on one count and betters on the other. Whether
   * the choice is better than the datum is another question.
   */
  @Override
  public Outcome outcome() {
    int most = options.stream().mapToInt(this::pluses).max().orElseThrow();
    int fewest = options.stream().mapToInt(this::minuses).min().orElseThrow();
    List<String> best =
        options.stream().filter(o -> pluses(o) == most && minuses(o) == fewest).toList();
    return switch (best.size()) {
      case 0 -> new Outcome.NoResult(Outcome.Cause.MIXED, undominated());
      case 1 -> new Outcome.Winner(best.get(0));
      default -> new Outcome.Tie(best);
    };
  }

  private List<String> undominated() {
    return options.stream()
        .filter(o -> options.stream().noneMatch(other -> dominates(other, o)))
        .toList();
  }

  private boolean dominates(String other, String option) {
    int pluses = pluses(other) - pluses(option);
    int minuses = minuses(other) - minuses(option);
    return pluses >= 0 && minuses <= 0 && (pluses > 0 || minuses < 0);
  }

  private int count(String option, int sign) {
    Ballots.known("option", List.of(option), options);
    return (int) signs.get(options.indexOf(option)).stream().filter(s -> s == sign).count();
  }
}
