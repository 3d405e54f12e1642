package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Better, the same or worse than one known case. */
class DatumMatrixTest {
  private static final List<String> FOUR = List.of("D1", "D2", "D3", "D4");

  /**
   * A students' table at Ohio State University (u.osu.edu, "Concept scoring and screening"), the
   * designs numbered: pluses 2 1 1 3, minuses 3 0 1 0, net -1 1 0 3; the first was dropped.
   */
  @Test
  void four_designs_against_a_reference() {
    DatumMatrix matrix =
        new DatumMatrix(
            "reference",
            FOUR,
            List.of("stability", "efficiency", "weight", "price", "safety"),
            List.of(
                List.of(1, -1, -1, -1, 1),
                List.of(0, 1, 0, 0, 0),
                List.of(-1, 0, 0, 0, 1),
                List.of(0, 1, 1, 1, 0)));

    assertThat(FOUR).extracting(matrix::pluses).containsExactly(2, 1, 1, 3);
    assertThat(FOUR).extracting(matrix::minuses).containsExactly(3, 0, 1, 0);
    assertThat(sums(matrix)).containsExactly("-1", "1", "0", "3");
    assertThat(matrix.ranking().options()).containsExactly("D4", "D2", "D3", "D1");
    assertThat(matrix.outcome()).isEqualTo(winner("D4"));
  }

  /**
   * The exercise: pluses and minuses in one figure, and "a minus on a point that matters gets
   * lost".
   */
  @Test
  void most_pluses_with_more_minuses_is_no_result() {
    DatumMatrix matrix = three(new int[] {1, 1, -1}, new int[] {1, 0, 0}, new int[] {1, 0, -1});

    assertThat(matrix.outcome()).isEqualTo(none(Outcome.Cause.MIXED, "A", "B"));
  }

  @Test
  void an_option_that_another_equals_on_one_count_and_betters_on_the_other_is_out() {
    assertThat(three(new int[] {1, 1, -1}, new int[] {0, 0, 0}, new int[] {0, 1, -1}).outcome())
        .isEqualTo(none(Outcome.Cause.MIXED, "A", "B"));
    assertThat(three(new int[] {1, 1, -1}, new int[] {0, 0, 0}, new int[] {1, -1, -1}).outcome())
        .isEqualTo(none(Outcome.Cause.MIXED, "A", "B"));
    assertThat(three(new int[] {1, 1, -1}, new int[] {0, 0, 0}, new int[] {0, 0, -1}).outcome())
        .isEqualTo(none(Outcome.Cause.MIXED, "A", "B"));
    assertThat(three(new int[] {1, 1, -1}, new int[] {0, 0, 0}, new int[] {-1, 1, 1}).outcome())
        .isEqualTo(none(Outcome.Cause.MIXED, "A", "B", "C"));
  }

  @Test
  void the_same_signs_in_number_are_a_tie() {
    assertThat(three(new int[] {1, 0, -1}, new int[] {-1, 1, 0}, new int[] {0, 0, -1}).outcome())
        .isEqualTo(tie("A", "B"));
  }

  @Test
  void the_datum_is_not_an_option_and_signs_are_whole() {
    assertThatThrownBy(
            () ->
                new DatumMatrix(
                    "A", List.of("A", "B"), List.of("c"), List.of(List.of(0), List.of(1))))
        .hasMessage("datum is A: it is what options are compared with; take it off the options");
    assertThatThrownBy(() -> three(new int[] {1, 0, 0}, new int[] {1, 0, 2}, new int[] {1, 0, 0}))
        .hasMessage("mark of B is 2: a whole number from -1 to 1 is right");
    assertThatThrownBy(() -> three(new int[] {1}, new int[] {1}, new int[] {1}))
        .hasMessage("row of A is 1 marks: it needs one for each of 3 criteria");
    DatumMatrix matrix = three(new int[] {1, 1, -1}, new int[] {1, 0, 0}, new int[] {1, 0, -1});
    assertThatThrownBy(() -> matrix.pluses("D")).hasMessage("option is D: one of A, B, C is right");
  }

  private static DatumMatrix three(int[]... signs) {
    return new DatumMatrix(
        "as today",
        List.of("A", "B", "C"),
        List.of("x", "y", "z"),
        Arrays.stream(signs).map(row -> IntStream.of(row).boxed().toList()).toList());
  }
}
