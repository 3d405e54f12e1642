package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.arcwright.vote.Multivote.Allotment;
import org.arcwright.vote.Slips.Tennessee;
import org.arcwright.vote.Totals.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums of votes whose ballots nobody kept. */
class TotalsTest {
  private static final List<String> FIVE = List.of("A", "B", "C", "D", "E");

  /**
   * A worked example of the nominal group technique, read on a page of a university's extension
   * service: four voters give their best five to one points, which makes 17, 15, 14, 9 and 5.
   */
  @Test
  void the_votes_of_a_nominal_group() {
    Totals totals = new Totals(FIVE, List.of(17, 15, 14, 9, 5), 4, Limits.ofRankedPoints(5));

    assertThat(totals.outcome()).isEqualTo(winner("A"));
    assertThat(totals.ranking().options()).containsExactlyElementsOf(FIVE);
  }

  @ParameterizedTest
  @CsvSource({
    "16, 'totals is 59 in all: 4 voters give 60 in all; count again'",
    "18, 'totals is 61 in all: 4 voters give 60 in all; count again'",
    "21, 'totals is A: 21: 4 voters give one option 0 to 20; count again'",
    "-1, 'totals is A: -1: 4 voters give one option 0 to 20; count again'"
  })
  void a_slip_in_adding_up_is_found(int sumOfA, String complaint) {
    assertThatThrownBy(
            () -> new Totals(FIVE, List.of(sumOfA, 15, 14, 9, 5), 4, Limits.ofRankedPoints(5)))
        .hasMessage(complaint);
  }

  @Test
  void they_say_what_the_ballots_would_have_said() {
    Borda ballots = new Borda(Tennessee.CITIES, Tennessee.BALLOTS);
    List<Integer> sums =
        ballots.scores().stream().map(score -> Integer.valueOf(score.sum().toString())).toList();

    Totals totals = new Totals(Tennessee.CITIES, sums, 100, Limits.ofBorda(4));

    assertThat(totals.outcome()).isEqualTo(ballots.outcome());
    assertThat(totals.ranking().options()).isEqualTo(ballots.ranking().options());
  }

  @Test
  void votes_may_be_left_unused_where_each_has_so_many_to_spread() {
    Limits limits = Limits.of(new Allotment(3, 2));
    List<String> two = List.of("Seeds", "Tents");

    assertThat(new Totals(two, List.of(2, 2), 2, limits).outcome())
        .isEqualTo(tie("Seeds", "Tents"));
    assertThat(new Totals(two, List.of(0, 0), 2, limits).outcome())
        .isEqualTo(none(Outcome.Cause.NO_VOTES, "Seeds", "Tents"));
    assertThatThrownBy(() -> new Totals(two, List.of(4, 3), 2, limits))
        .hasMessage("totals is 7 in all: 2 voters give at most 6 in all; count again");
    assertThatThrownBy(() -> new Totals(two, List.of(5, 0), 2, limits))
        .hasMessage("totals is Seeds: 5: 2 voters give one option 0 to 4; count again");
  }

  @Test
  void an_approval_gives_each_option_no_more_than_one_from_each() {
    assertThatThrownBy(() -> new Totals(List.of("a", "b"), List.of(4, 1), 3, Limits.ofApproval(2)))
        .hasMessageContaining("3 voters give one option 0 to 3");
  }

  @Test
  void each_option_has_one_sum() {
    assertThatThrownBy(() -> new Totals(FIVE, List.of(1, 2), 3, Limits.ofApproval(5)))
        .hasMessage("totals is 2 numbers: each of 5 options has one");
  }
}
