package org.arcwright.vote;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * Options marked on criteria that weigh differently; the highest sum of weight times mark is ahead.
 * After Edwards, How to use multiattribute utility measurement (1977). Time is linear in the marks;
 * {@link #turningPoints()} takes that times the criteria.
 *
 * @param options 2 to 500
 * @param criteria 1 to 50, not all of weight 0
 * @param marks {@code marks.get(i).get(k)}, 0 to 10,000, is what option i gets on criterion k
 */
public record WeightedMatrix(
    List<String> options, List<Criterion> criteria, List<List<Integer>> marks) implements Tally {
  /**
   * What a good choice must meet.
   *
   * @param weight 0 to 10,000; only the proportions count
   */
  public record Criterion(String name, int weight) {
    /** Refuses an empty name and a weight outside its range. */
    public Criterion {
      name = Checks.text("criterion", name, 200);
      Checks.range("weight of " + name, weight, 0, 10_000);
    }
  }

  /** Refuses criteria without any weight and a table with a cell missing. */
  public WeightedMatrix {
    options = Ballots.options(options);
    criteria = List.copyOf(criteria);
    Matrices.criteria(criteria.stream().map(Criterion::name).toList());
    if (criteria.stream().allMatch(c -> c.weight() == 0)) {
      throw new InvalidValueException("weights", "all 0", "give one criterion at least a weight");
    }
    marks = Matrices.cells(options, criteria.size(), marks, 0, 10_000);
  }

  /** The weights of all criteria together. */
  public int totalWeight() {
    return criteria.stream().mapToInt(Criterion::weight).sum();
  }

  /** Weight times mark for each criterion. */
  @Override
  public List<Score> scores() {
    return IntStream.range(0, options.size())
        .mapToObj(
            i ->
                Score.of(
                    options.get(i),
                    IntStream.range(0, criteria.size())
                        .map(k -> criteria.get(k).weight() * marks.get(i).get(k))))
        .toList();
  }

  @Override
  public Outcome outcome() {
    return ranking().outcome();
  }

  /** The same matrix without a criterion: does the first place change? */
  public WeightedMatrix without(String criterion) {
    Ballots.known("criterion", List.of(criterion), criteria.stream().map(Criterion::name).toList());
    List<Integer> left =
        IntStream.range(0, criteria.size())
            .filter(k -> !criteria.get(k).name().equals(criterion))
            .boxed()
            .toList();
    return new WeightedMatrix(
        options,
        left.stream().map(criteria::get).toList(),
        marks.stream().map(row -> left.stream().map(row::get).toList()).toList());
  }

  /**
   * For each criterion, how far its weight has to rise and to fall, the others keeping their
   * proportions, until another option wins. Ordered by criterion, a fall before a rise; a direction
   * in which the winner stays is left out. Empty if there is no single winner.
   */
  public List<TurningPoint> turningPoints() {
    return outcome() instanceof Outcome.Winner winner
        ? Sensitivity.turningPoints(this, options.indexOf(winner.option()))
        : List.of();
  }

  /** The turning point that takes the smallest change in share; empty if nothing can turn it. */
  public Optional<TurningPoint> nearestTurningPoint() {
    return turningPoints().stream().min(Comparator.comparing(p -> p.change().abs()));
  }
}
