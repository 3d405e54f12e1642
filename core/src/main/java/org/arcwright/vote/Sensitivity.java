package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.arcwright.vote.WeightedMatrix.Criterion;

/**
 * By how much one weight has to change until another option wins.
 *
 * <p>With all other weights held, a challenger's lead over the winner is a straight line in the
 * weight w of one criterion, {@code rest + w * slope}. It is under 0 at the weight as written, and
 * where it is 0 the two are level. Holding the others or letting them keep their proportions is the
 * same, for only proportions count.
 */
final class Sensitivity {
  private final WeightedMatrix matrix;
  private final int winner;
  private final int criterion;

  private Sensitivity(WeightedMatrix matrix, int winner, int criterion) {
    this.matrix = matrix;
    this.winner = winner;
    this.criterion = criterion;
  }

  static List<TurningPoint> turningPoints(WeightedMatrix matrix, int winner) {
    List<TurningPoint> points = new ArrayList<>();
    for (int k = 0; k < matrix.criteria().size(); k++) {
      Sensitivity one = new Sensitivity(matrix, winner, k);
      one.fall().ifPresent(points::add);
      one.rise().ifPresent(points::add);
    }
    return points;
  }

  /** Whoever draws level at weight 0 only never wins. */
  private Optional<TurningPoint> fall() {
    return nearest(i -> slope(i) < 0 && rest(i) > 0, Comparator.reverseOrder());
  }

  private Optional<TurningPoint> rise() {
    return nearest(i -> slope(i) > 0, Comparator.naturalOrder());
  }

  private Optional<TurningPoint> nearest(IntPredicate challenges, Comparator<Fraction> nearest) {
    List<Integer> challengers =
        IntStream.range(0, matrix.options().size()).filter(challenges).boxed().toList();
    return challengers.stream()
        .map(this::levelAt)
        .min(nearest)
        .map(w -> at(w, challengers.stream().filter(i -> levelAt(i).equals(w)).toList()));
  }

  private TurningPoint at(Fraction weight, List<Integer> challengers) {
    Criterion one = matrix.criteria().get(criterion);
    long total = matrix.totalWeight();
    long others = total - one.weight();
    return new TurningPoint(
        one.name(),
        new Fraction(one.weight(), total),
        new Fraction(weight.numerator(), weight.numerator() + weight.denominator() * others),
        weight,
        challengers.stream().map(matrix.options()::get).toList());
  }

  private Fraction levelAt(int challenger) {
    int slope = slope(challenger);
    long rest = rest(challenger);
    return slope > 0 ? new Fraction(-rest, slope) : new Fraction(rest, -slope);
  }

  private int slope(int challenger) {
    return lead(challenger, criterion);
  }

  private long rest(int challenger) {
    return IntStream.range(0, matrix.criteria().size())
        .filter(k -> k != criterion)
        .mapToLong(k -> (long) matrix.criteria().get(k).weight() * lead(challenger, k))
        .sum();
  }

  private int lead(int challenger, int on) {
    return matrix.marks().get(challenger).get(on) - matrix.marks().get(winner).get(on);
  }
}
