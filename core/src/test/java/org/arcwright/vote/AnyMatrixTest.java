package org.arcwright.vote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.vote.Outcome.Winner;
import org.arcwright.vote.WeightedMatrix.Criterion;

/** What holds for every matrix of weights and marks. */
class AnyMatrixTest {
  @Property(tries = 500, seed = "1997")
  void at_a_turning_point_the_winner_is_level_with_the_challengers_alone(
      @ForAll("matrices") WeightedMatrix matrix) {
    for (TurningPoint point : matrix.turningPoints()) {
      String winner = ((Winner) matrix.outcome()).option();
      Fraction at = point.weightAt();

      List<String> first = weighing(matrix, point.criterion(), at).ranking().first();

      assertThat(first).contains(winner).containsAll(point.challengers());
      assertThat(first).hasSize(1 + point.challengers().size());
    }
  }

  @Property(tries = 500, seed = "1997")
  void just_before_a_turning_point_the_winner_stays_and_just_past_it_a_challenger_wins(
      @ForAll("matrices") WeightedMatrix matrix) {
    for (TurningPoint point : matrix.turningPoints()) {
      String winner = ((Winner) matrix.outcome()).option();
      Fraction at = point.weightAt();
      Fraction step = new Fraction(point.change().signum(), 50 * at.denominator());

      assertThat(weighing(matrix, point.criterion(), at.minus(step)).ranking().first())
          .containsExactly(winner);
      assertThat(weighing(matrix, point.criterion(), at.plus(step)).ranking().first())
          .doesNotContain(winner)
          .allSatisfy(option -> assertThat(point.challengers()).contains(option));
    }
  }

  /** Every quarter of a weight from 0 to 40 is tried; the winner changes only past the points. */
  @Property(tries = 100, seed = "1997")
  void between_the_turning_points_the_winner_stays(@ForAll("matrices") WeightedMatrix matrix) {
    if (!(matrix.outcome() instanceof Winner winner)) {
      return;
    }
    for (Criterion criterion : matrix.criteria()) {
      for (int quarters = 0; quarters <= 160; quarters++) {
        Fraction weight = new Fraction(quarters, 4);
        if (weight.signum() == 0 && matrix.totalWeight() == criterion.weight()) {
          continue;
        }
        boolean stays =
            weighing(matrix, criterion.name(), weight).ranking().first().contains(winner.option());
        assertThat(stays).isEqualTo(!past(matrix, criterion, weight));
      }
    }
  }

  @Property(tries = 200, seed = "1997")
  void shares_do_not_change_when_all_weights_are_doubled(
      @ForAll("matrices") WeightedMatrix matrix) {
    WeightedMatrix doubled =
        new WeightedMatrix(
            matrix.options(),
            matrix.criteria().stream().map(c -> new Criterion(c.name(), 2 * c.weight())).toList(),
            matrix.marks());

    assertThat(doubled.outcome()).isEqualTo(matrix.outcome());
    assertThat(doubled.turningPoints())
        .extracting(TurningPoint::change)
        .isEqualTo(matrix.turningPoints().stream().map(TurningPoint::change).toList());
  }

  private static boolean past(WeightedMatrix matrix, Criterion criterion, Fraction weight) {
    return matrix.turningPoints().stream()
        .filter(p -> p.criterion().equals(criterion.name()))
        .anyMatch(p -> weight.minus(p.weightAt()).signum() == p.change().signum());
  }

  /** The matrix with another weight, all weights multiplied so that they are whole. */
  private static WeightedMatrix weighing(WeightedMatrix matrix, String criterion, Fraction weight) {
    List<Criterion> criteria = new ArrayList<>();
    for (Criterion c : matrix.criteria()) {
      long whole =
          c.name().equals(criterion) ? weight.numerator() : c.weight() * weight.denominator();
      criteria.add(new Criterion(c.name(), Math.toIntExact(whole)));
    }
    return new WeightedMatrix(matrix.options(), criteria, matrix.marks());
  }

  @Provide
  Arbitrary<WeightedMatrix> matrices() {
    return Combinators.combine(
            Arbitraries.integers().between(2, 4), Arbitraries.integers().between(1, 4))
        .flatAs(AnyMatrixTest::matrices);
  }

  private static Arbitrary<WeightedMatrix> matrices(int options, int criteria) {
    return Combinators.combine(
            Arbitraries.integers().between(0, 6).list().ofSize(criteria),
            Arbitraries.integers().between(0, 5).list().ofSize(criteria).list().ofSize(options))
        .filter((weights, marks) -> weights.stream().anyMatch(w -> w > 0))
        .as(
            (weights, marks) ->
                WeightedMatrixTest.matrix(
                    weights.stream().mapToInt(w -> w).toArray(),
                    marks.stream()
                        .map(row -> row.stream().mapToInt(m -> m).toArray())
                        .toArray(int[][]::new)));
  }
}
