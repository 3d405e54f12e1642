package org.arcwright.vote;

import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Points from a number of picks down to one. */
class RankedPointsTest {
  private static final List<String> FIVE = List.of("A", "B", "C", "D", "E");

  /**
   * The worked vote of four people on freerangelearner.com, "Nominal Group Technique": A 5 4 5 3 =
   * 17, B 3 5 2 5 = 15, C 4 3 3 4 = 14, D 2 2 4 1 = 9, E 1 1 1 2 = 5.
   */
  @Test
  void the_worked_vote_of_the_nominal_group_technique() {
    RankedPoints vote = votes(5, "A C B D E", "B A C D E", "A D C B E", "B C A E D");

    assertThat(vote.scores())
        .extracting(score -> score.parts().toString())
        .containsExactly(
            "[5, 4, 5, 3]", "[3, 5, 2, 5]", "[4, 3, 3, 4]", "[2, 2, 4, 1]", "[1, 1, 1, 2]");
    assertThat(sums(vote)).containsExactly("17", "15", "14", "9", "5");
    assertThat(vote.ranking().options()).isEqualTo(FIVE);
    assertThat(vote.outcome()).isEqualTo(winner("A"));
  }

  /** The exercise: "Check the sum. Four people give 60 points in all, as each gives 15." */
  @Test
  void every_ballot_holds_the_same_points() {
    RankedPoints vote = votes(5, "A C B D E", "B A C D E", "A D C B E", "B C A E D");

    assertThat(vote.pointsOnBallot()).isEqualTo(15);
    assertThat(vote.scores().stream().map(Score::sum).reduce(Fraction.ZERO, Fraction::plus))
        .isEqualTo(Fraction.of(60));
  }

  @Test
  void an_option_nobody_picks_has_no_points_and_supporters_are_counted() {
    RankedPoints vote = votes(2, "A B", "A C", "C B");

    assertThat(sums(vote)).containsExactly("4", "2", "3", "0", "0");
    assertThat(FIVE).extracting(vote::supporters).containsExactly(2, 2, 2, 0, 0);
  }

  /** The exercises: "On a tie the item with more fives wins, then the sponsor chooses." */
  @Test
  void a_tie_goes_to_the_item_with_more_top_marks_and_is_told_as_a_second_round() {
    RankedPoints vote = votes(3, "A B C", "A D E", "B C A", "C B A");

    assertThat(sums(vote)).startsWith("8", "7");
    RankedPoints level = votes(3, "A B C", "A B C", "D B E");
    assertThat(sums(level)).startsWith("6", "6");
    assertThat(level.outcome()).isEqualTo(winner("A"));
    assertThat(level.decision().rounds())
        .extracting(Decision.Round::measure)
        .containsExactly(Decision.Measure.SUM, Decision.Measure.TOP_MARKS);
    assertThat(level.decision().rounds().get(1).ranking().standings())
        .containsExactly(
            new Ranking.Standing(1, "A", Fraction.of(2)),
            new Ranking.Standing(2, "B", Fraction.ZERO));
    assertThat(vote.decision().rounds()).hasSize(1);
  }

  @Test
  void level_in_both_is_a_tie() {
    assertThat(votes(2, "A B", "B A").outcome()).isEqualTo(tie("A", "B"));
  }

  @Test
  void slips_with_a_missing_or_doubled_item_are_handed_back() {
    assertThatThrownBy(() -> votes(3, "A B C", "A B"))
        .hasMessage("ballot 2 is 2 options: it has to name 3; hand it back");
    assertThatThrownBy(() -> votes(3, "A B A"))
        .hasMessage("ballot 1 is A: it stands here twice; name it once");
    assertThatThrownBy(() -> votes(1, "F"))
        .hasMessage("ballot 1 is F: one of A, B, C, D, E is right");
    assertThatThrownBy(() -> votes(6, "A B C D E"))
        .hasMessage("picks is 6: a whole number from 1 to 5 is right");
    assertThatThrownBy(() -> votes(1))
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
    assertThatThrownBy(() -> votes(1, "A").supporters("Z"))
        .hasMessage("option is Z: one of A, B, C, D, E is right");
  }

  private static RankedPoints votes(int picks, String... ballots) {
    return new RankedPoints(
        FIVE, picks, Arrays.stream(ballots).map(b -> List.of(b.split(" "))).toList());
  }
}
