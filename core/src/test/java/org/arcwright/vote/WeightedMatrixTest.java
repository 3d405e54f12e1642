package org.arcwright.vote;

import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.vote.WeightedMatrix.Criterion;
import org.junit.jupiter.api.Test;

/** Marks on criteria that weigh differently. */
class WeightedMatrixTest {
  /**
   * Triantaphyllou and Sánchez (1997), Decision Sciences 28(1), the example of the weighted sum
   * model: table and results from memory, in ten-thousandths.
   */
  private static final WeightedMatrix PUBLISHED =
      matrix(
          new int[] {3277, 3058, 2876, 790},
          new int[] {3088, 2897, 3867, 1922},
          new int[] {2163, 3458, 1755, 6288},
          new int[] {4509, 2473, 1194, 575},
          new int[] {240, 1172, 3184, 1215});

  /**
   * "Weighted sum model" in an online encyclopedia (owiki.org), the table as read, the sums 21.5,
   * 22 and 22 computed; weights in hundredths.
   */
  @Test
  void a_published_example_with_a_tie() {
    WeightedMatrix matrix =
        matrix(
            new int[] {20, 15, 40, 25},
            new int[] {25, 20, 15, 30},
            new int[] {10, 30, 20, 30},
            new int[] {30, 10, 30, 10});

    assertThat(sums(matrix)).containsExactly("2150", "2200", "2200");
    assertThat(matrix.scores().get(0).parts()).hasToString("[500, 300, 600, 750]");
    assertThat(matrix.outcome()).isEqualTo(tie("A2", "A3"));
    assertThat(matrix.turningPoints()).isEmpty();
    assertThat(matrix.nearestTurningPoint()).isEmpty();
  }

  @Test
  void a_published_example_is_ranked_as_published() {
    assertThat(PUBLISHED.ranking().options()).containsExactly("A1", "A2", "A3", "A4");
    assertThat(PUBLISHED.scores())
        .extracting(score -> Math.round(score.sum().numerator() / 10_000.0))
        .containsExactly(3162L, 2768L, 2623L, 1449L);
  }

  /**
   * The paper takes from a weight what makes two options level: -0.3807 on C1 (A3), -0.7023 on C2
   * (A2), 0.1866 or 64.88 per cent on C3 (A2), -0.0902 on C4 (A2). It works with rounded sums,
   * hence the tolerance; from memory.
   */
  @Test
  void a_published_example_turns_where_it_is_published_to_turn() {
    double[] published = {-0.3807, -0.7023, 0.1866, -0.0902};
    List<String> against = List.of("A3", "A2", "A2", "A2");

    List<TurningPoint> points = PUBLISHED.turningPoints();

    assertThat(points).extracting(TurningPoint::criterion).containsExactly("C1", "C2", "C3", "C4");
    for (int k = 0; k < published.length; k++) {
      double weight = PUBLISHED.criteria().get(k).weight() / 10_000.0;
      assertThat(weight - value(points.get(k).weightAt()) / 10_000)
          .isCloseTo(published[k], within(0.0015));
      assertThat(points.get(k).challengers()).containsExactly(against.get(k));
    }
    assertThat(points.get(2).weightAt()).isEqualTo(new Fraction(711_151, 704));
    assertThat(PUBLISHED.nearestTurningPoint().map(TurningPoint::criterion)).contains("C4");
  }

  /** Computed by hand: 2w against 6 + w. */
  @Test
  void the_share_at_the_turning_point_leaves_the_others_their_proportions() {
    WeightedMatrix matrix = matrix(new int[] {2, 1, 1}, new int[] {1, 3, 3}, new int[] {2, 0, 0});

    assertThat(sums(matrix)).containsExactly("8", "4");
    assertThat(matrix.turningPoints().get(0))
        .isEqualTo(
            new TurningPoint(
                "C1", new Fraction(1, 2), new Fraction(3, 4), Fraction.of(6), List.of("A2")));
    assertThat(matrix.turningPoints().get(0).change()).isEqualTo(new Fraction(1, 4));
  }

  @Test
  void an_option_that_is_best_on_everything_stays() {
    assertThat(matrix(new int[] {1, 1}, new int[] {5, 5}, new int[] {5, 4}).turningPoints())
        .isEmpty();
  }

  @Test
  void whoever_draws_level_only_where_the_weight_is_gone_never_wins() {
    WeightedMatrix matrix = matrix(new int[] {1, 1}, new int[] {5, 5}, new int[] {4, 5});

    assertThat(matrix.turningPoints()).isEmpty();
    assertThat(matrix.without("C1").outcome()).isEqualTo(tie("A1", "A2"));
  }

  @Test
  void a_fall_and_a_rise_of_one_weight_may_both_turn_it_and_several_may_draw_level_at_once() {
    WeightedMatrix matrix =
        matrix(
            new int[] {1, 1},
            new int[] {6, 6},
            new int[] {10, 0},
            new int[] {0, 10},
            new int[] {4, 7});

    assertThat(matrix.turningPoints())
        .extracting(p -> p.criterion() + " " + p.weightAt() + " " + p.challengers())
        .containsExactly("C1 2/3 [A3]", "C1 3/2 [A2]", "C2 2/3 [A2]", "C2 3/2 [A3]");
    assertThat(
            matrix(new int[] {1, 1}, new int[] {6, 6}, new int[] {10, 0}, new int[] {8, 3})
                .turningPoints())
        .extracting(p -> p.criterion() + " " + p.weightAt() + " " + p.challengers())
        .containsExactly("C1 3/2 [A2, A3]", "C2 2/3 [A2, A3]");
  }

  /** The exercise: "Try it without the heaviest point: does the first place change?" */
  @Test
  void a_criterion_may_be_left_out() {
    WeightedMatrix matrix =
        matrix(new int[] {30, 20, 10}, new int[] {9, 3, 3}, new int[] {5, 6, 4});

    assertThat(matrix.outcome()).isEqualTo(winner("A1"));
    assertThat(matrix.without("C1").outcome()).isEqualTo(winner("A2"));
    assertThatThrownBy(() -> matrix.without("C4"))
        .hasMessage("criterion is C4: one of C1, C2, C3 is right");
  }

  @Test
  void a_table_with_a_hole_or_without_weights_is_refused() {
    assertThatThrownBy(() -> matrix(new int[] {1, 1}, new int[] {5, 5}, new int[] {5}))
        .hasMessage("row of A2 is 1 marks: it needs one for each of 2 criteria");
    assertThatThrownBy(() -> matrix(new int[] {0, 0}, new int[] {5, 5}, new int[] {5, 5}))
        .hasMessage("weights is all 0: give one criterion at least a weight");
    assertThatThrownBy(() -> matrix(new int[] {1, -1}, new int[] {5, 5}, new int[] {5, 5}))
        .hasMessage("weight of C2 is -1: a whole number from 0 to 10000 is right");
    assertThatThrownBy(() -> matrix(new int[] {1}, new int[] {5}, new int[] {-5}))
        .hasMessage("mark of A2 is -5: a whole number from 0 to 10000 is right");
    assertThatThrownBy(
            () ->
                new WeightedMatrix(
                    List.of("A1", "A2"), List.of(new Criterion("C1", 1)), List.of(List.of(1))))
        .hasMessage("rows is 1: the table has a row for each of 2 options");
  }

  @Test
  void the_largest_weights_and_marks_are_counted_exactly() {
    int[] weights = new int[50];
    int[] ahead = new int[50];
    int[] behind = new int[50];
    Arrays.fill(weights, 10_000);
    Arrays.fill(ahead, 10_000);
    ahead[0] = 1;
    behind[0] = 10_000;
    WeightedMatrix matrix = matrix(weights, ahead, behind);

    assertThat(sums(matrix)).containsExactly("4900010000", "100000000");
    assertThat(matrix.nearestTurningPoint().orElseThrow().change())
        .isEqualTo(new Fraction(10_000, 19_999).minus(new Fraction(1, 50)));
  }

  private static double value(Fraction fraction) {
    return (double) fraction.numerator() / fraction.denominator();
  }

  /** Criteria C1, C2, ... and options A1, A2, ... */
  static WeightedMatrix matrix(int[] weights, int[]... marks) {
    return new WeightedMatrix(
        IntStream.rangeClosed(1, marks.length).mapToObj(i -> "A" + i).toList(),
        IntStream.range(0, weights.length)
            .mapToObj(k -> new Criterion("C" + (k + 1), weights[k]))
            .toList(),
        List.of(marks).stream().map(row -> IntStream.of(row).boxed().toList()).toList());
  }
}
