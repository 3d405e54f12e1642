package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.orders;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.arcwright.vote.Decision.Measure;
import org.arcwright.vote.Outcome.Cause;
import org.arcwright.vote.Pairwise.Duel;
import org.arcwright.vote.Slips.Tennessee;
import org.junit.jupiter.api.Test;

/** Options two at a time. */
class PairwiseTest {
  private static final List<String> THREE = List.of("A", "B", "C");
  private static final List<String> FOUR = List.of("A", "B", "C", "D");

  /**
   * electowiki.org, "Kemeny-Young method": Nashville > Chattanooga > Knoxville > Memphis, against
   * which stand 32, 32, 42, 17, 42 and 42 of a hundred voters, pair by pair.
   */
  @Test
  void a_capital_for_tennessee() {
    Pairwise vote = Pairwise.of(Tennessee.CITIES, Tennessee.BALLOTS);

    assertThat(vote.duels())
        .containsExactly(
            new Duel("Memphis", 42, "Nashville", 58),
            new Duel("Memphis", 42, "Chattanooga", 58),
            new Duel("Memphis", 42, "Knoxville", 58),
            new Duel("Nashville", 68, "Chattanooga", 32),
            new Duel("Nashville", 68, "Knoxville", 32),
            new Duel("Chattanooga", 83, "Knoxville", 17));
    assertThat(vote.outcome()).isEqualTo(winner("Nashville"));
    assertThat(vote.smithSet()).containsExactly("Nashville");
    assertThat(vote.cycle()).isEmpty();
    assertThat(vote.ranking().options())
        .containsExactly("Nashville", "Chattanooga", "Knoxville", "Memphis");
  }

  /** Condorcet's paradox (Essai, 1785). */
  @Test
  void three_voters_may_go_round_in_a_circle() {
    Pairwise vote = Pairwise.of(THREE, orders(1, "A > B > C", 1, "B > C > A", 1, "C > A > B"));

    assertThat(vote.outcome()).isEqualTo(none(Cause.CYCLE, "A", "B", "C"));
    assertThat(vote.cycle()).contains(List.of("A", "B", "C"));
    assertThat(sums(vote)).containsExactly("1", "1", "1");
    assertThat(vote.decision().outcome()).isEqualTo(tie("A", "B", "C"));
  }

  /**
   * An answer on a question-and-answer page on when the Smith set differs from the Copeland set: A
   * beats B, B beats C and D, C beats A and D, D beats A. The Smith set is all four, the Copeland
   * set B and C.
   */
  @Test
  void the_smith_set_may_be_wider_than_those_with_most_wins() {
    Pairwise vote =
        Pairwise.of(FOUR, orders(1, "A > B > C > D", 1, "B > C > D > A", 1, "C > D > A > B"));

    assertThat(vote.smithSet()).containsExactly("A", "B", "C", "D");
    assertThat(vote.ranking().first()).containsExactly("B", "C");
    assertThat(sums(vote)).containsExactly("1", "2", "2", "1");
    assertThat(vote.outcome()).isEqualTo(none(Cause.CYCLE, "A", "B", "C", "D"));
    assertThat(vote.cycle()).contains(List.of("A", "B", "C"));
  }

  @Test
  void a_circle_beats_whoever_stands_outside() {
    Pairwise vote =
        Pairwise.of(FOUR, orders(1, "A > B > C > D", 1, "B > C > A > D", 1, "C > A > B > D"));

    assertThat(vote.outcome()).isEqualTo(none(Cause.CYCLE, "A", "B", "C"));
    assertThat(vote.scores().get(3).parts()).hasToString("[0, 0, 0]");
  }

  /**
   * With three options the smallest worst defeat is Condorcet's own way out of a circle, to drop
   * the proposition with the smallest majority (Young 1988, from memory). The figures are made up.
   */
  @Test
  void a_circle_is_broken_where_the_defeat_is_smallest() {
    Pairwise vote = Pairwise.of(THREE, orders(4, "A > B > C", 3, "B > C > A", 2, "C > A > B"));

    assertThat(vote.outcome()).isEqualTo(none(Cause.CYCLE, "A", "B", "C"));
    assertThat(vote.decision().outcome()).isEqualTo(winner("A"));
    assertThat(vote.decision().rounds())
        .extracting(Decision.Round::measure)
        .containsExactly(Measure.WINS, Measure.WORST_DEFEAT);
    assertThat(vote.decision().rounds().get(1).ranking().standings())
        .extracting(s -> s.option() + " " + s.sum())
        .containsExactly("A -1", "B -3", "C -5");
  }

  @Test
  void equal_counts_are_half_a_win_each() {
    Pairwise vote = Pairwise.of(THREE, orders(1, "A > B > C", 1, "B > A > C"));

    assertThat(vote.scores())
        .extracting(score -> score.parts().toString())
        .containsExactly("[1/2, 1]", "[1/2, 1]", "[0, 0]");
    assertThat(vote.outcome()).isEqualTo(tie("A", "B"));
  }

  /** A beats C, yet B is level with both: no circle, no winner, and no plain tie. */
  @Test
  void level_pairs_may_hide_the_winner() {
    Pairwise vote = Pairwise.of(THREE, orders(1, "A > C > B", 1, "B > A > C"));

    assertThat(vote.outcome()).isEqualTo(none(Cause.LEVEL_PAIRS, "A", "B", "C"));
    assertThat(vote.cycle()).isEmpty();
    assertThat(vote.decision().outcome()).isEqualTo(winner("A"));
  }

  @Test
  void on_a_ballot_with_a_tie_nobody_is_ahead_in_that_pair() {
    assertThat(Pairwise.of(THREE, orders(2, "A > B = C", 1, "B > A = C")).duels())
        .containsExactly(
            new Duel("A", 2, "B", 1), new Duel("A", 2, "C", 0), new Duel("B", 1, "C", 0));
  }

  @Test
  void a_table_of_shown_hands_counts_as_well() {
    Pairwise vote = new Pairwise(List.of("A", "B"), List.of(List.of(0, 4), List.of(7, 0)));

    assertThat(vote.outcome()).isEqualTo(winner("B"));
  }

  @Test
  void a_table_has_to_be_square_with_nothing_on_its_diagonal() {
    List<String> two = List.of("A", "B");
    assertThatThrownBy(() -> new Pairwise(two, List.of(List.of(0, 4))))
        .hasMessage("rows is 1 long: the table has a row and a column for each of 2 options");
    assertThatThrownBy(() -> new Pairwise(two, List.of(List.of(0, 4), List.of(7))))
        .hasMessage("row of B is 1 long: the table has a row and a column for each of 2 options");
    assertThatThrownBy(() -> new Pairwise(two, List.of(List.of(0, 4), List.of(7, 1))))
        .hasMessage("B over B is 1: a whole number from 0 to 0 is right");
    assertThatThrownBy(() -> new Pairwise(two, List.of(List.of(0, -4), List.of(7, 0))))
        .hasMessage("A over B is -4: a whole number from 0 to 1000 is right");
  }
}
