package org.arcwright.vote;

import static org.arcwright.vote.Slips.orders;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.arcwright.vote.Slips.Tennessee;
import org.junit.jupiter.api.Test;

/** The count of places. */
class BordaTest {
  private static final List<String> THREE = List.of("A", "B", "C");

  /**
   * electowiki.org, "Borda count": Memphis 126, Nashville 194, Knoxville 107. Chattanooga's 173 is
   * from memory.
   */
  @Test
  void a_capital_for_tennessee() {
    Borda vote = new Borda(Tennessee.CITIES, Tennessee.BALLOTS);

    assertThat(sums(vote)).containsExactly("126", "194", "173", "107");
    assertThat(vote.outcome()).isEqualTo(winner("Nashville"));
    assertThat(vote.ranking().options())
        .containsExactly("Nashville", "Chattanooga", "Memphis", "Knoxville");
  }

  /**
   * A post on the election-methods list, February 2003: with 66 A > B > C and 34 B > C > A, B gets
   * 134 points, A 132 and C 34, although most prefer A to anything.
   */
  @Test
  void what_many_can_support_may_come_before_what_most_prefer() {
    List<RankedBallot> ballots = orders(66, "A > B > C", 34, "B > C > A");

    assertThat(sums(new Borda(THREE, ballots))).containsExactly("132", "134", "34");
    assertThat(new Borda(THREE, ballots).outcome()).isEqualTo(winner("B"));
    assertThat(Pairwise.of(THREE, ballots).outcome()).isEqualTo(winner("A"));
  }

  /** Sharing the points of the places evenly is common practice, no source. */
  @Test
  void level_options_share_the_points_of_their_places() {
    Borda vote = new Borda(THREE, orders(1, "A > B = C", 1, "A = B > C", 1, "C = B = A"));

    assertThat(vote.scores())
        .extracting(score -> score.parts().toString())
        .containsExactly("[2, 3/2, 1]", "[1/2, 3/2, 1]", "[1/2, 0, 1]");
    assertThat(sums(vote)).containsExactly("9/2", "3", "3/2");
  }

  @Test
  void equal_sums_tie() {
    assertThat(new Borda(THREE, orders(1, "A > B > C", 1, "B > A > C")).outcome())
        .isEqualTo(tie("A", "B"));
  }

  @Test
  void a_ballot_names_every_option_once() {
    assertThatThrownBy(() -> new Borda(THREE, orders(1, "A > B > C", 1, "A")))
        .hasMessage(
            "ballot 2 is 1 options: B, C is missing; hand it back, or put it in the last place");
    assertThatThrownBy(() -> new Borda(THREE, orders(1, "A > B > C > D")))
        .hasMessage("ballot 1 is D: one of A, B, C is right");
    assertThatThrownBy(() -> new Borda(THREE, List.of()))
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
    assertThatThrownBy(() -> orders(1, "A > B = A"))
        .hasMessage("order is A: it stands here twice; name it once");
    assertThatThrownBy(() -> new RankedBallot(List.of()))
        .hasMessage("order is empty: every place holds at least one option");
    assertThatThrownBy(() -> new RankedBallot(List.of(List.of("A"), List.of())))
        .hasMessage("order is [[A], []]: every place holds at least one option");
  }
}
