package org.arcwright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.record.Doubt.Level;
import org.arcwright.record.Doubt.NoAnswer;
import org.arcwright.record.Doubt.OtherVerdict;
import org.arcwright.record.Doubt.OthersAhead;
import org.arcwright.vote.FistToFive;
import org.arcwright.vote.Multivote;
import org.arcwright.vote.Multivote.Allotment;
import org.arcwright.vote.Outcome.Cause;
import org.arcwright.vote.Pairwise;
import org.arcwright.vote.RankedBallot;
import org.arcwright.vote.Tally;
import org.junit.jupiter.api.Test;

/** What was stated in the room, held against the figures. */
class VoteTest {
  private static final List<String> FIVE = List.of("A", "B", "C", "D", "E");

  /** One ballot that makes these sums. */
  private static Tally sums(int a, int b, int c, int d, int e) {
    Map<String, Integer> ballot = Map.of("A", a, "B", b, "C", c, "D", d, "E", e);
    return new Multivote(FIVE, new Allotment(60, 60), List.of(ballot));
  }

  /** Sums of the nominal group's vote that {@code TotalsTest} is about. */
  private static final Tally NOMINAL_GROUP = sums(17, 15, 14, 9, 5);

  private static Optional<Doubt> doubt(Tally tally, String... result) {
    return new Vote.Choice("Which?", Method.MULTIVOTING, tally, List.of(result)).doubt();
  }

  @Test
  void what_follows_from_the_figures_is_not_doubted() {
    assertThat(doubt(NOMINAL_GROUP, "A")).isEmpty();
    assertThat(doubt(NOMINAL_GROUP, "A", "B")).isEmpty();
    assertThat(doubt(NOMINAL_GROUP, "C", "A", "B")).isEmpty();
    assertThat(doubt(NOMINAL_GROUP, "A", "B", "C", "D", "E")).isEmpty();
  }

  @Test
  void nothing_stated_is_nothing_to_doubt() {
    assertThat(doubt(NOMINAL_GROUP)).isEmpty();
  }

  @Test
  void whoever_is_behind_did_not_win() {
    assertThat(doubt(NOMINAL_GROUP, "B")).contains(new OthersAhead(List.of("A")));
    assertThat(doubt(NOMINAL_GROUP, "A", "C")).contains(new OthersAhead(List.of("A", "B")));
    assertThat(doubt(sums(5, 4, 4, 1, 0), "B")).contains(new OthersAhead(List.of("A")));
  }

  @Test
  void figures_alone_choose_none_of_those_that_are_level() {
    Tally tie = sums(5, 5, 2, 0, 0);

    assertThat(doubt(tie, "A")).contains(new Level(List.of("A", "B")));
    assertThat(doubt(tie, "A", "B")).isEmpty();
    assertThat(doubt(tie, "C")).contains(new OthersAhead(List.of("A", "B")));
  }

  @Test
  void a_line_that_parts_a_tie_is_doubted() {
    Tally tie = sums(5, 4, 4, 1, 0);

    assertThat(doubt(tie, "A", "B")).contains(new Level(List.of("B", "C")));
    assertThat(doubt(tie, "A", "B", "C")).isEmpty();
    assertThat(doubt(tie, "B", "C")).contains(new OthersAhead(List.of("A", "B")));
  }

  /** Condorcet's paradox (Essai, 1785): the method names three and chooses none. */
  @Test
  void a_circle_gives_no_answer() {
    Pairwise circle =
        Pairwise.of(
            List.of("A", "B", "C"),
            List.of(
                new RankedBallot(List.of(List.of("A"), List.of("B"), List.of("C"))),
                new RankedBallot(List.of(List.of("B"), List.of("C"), List.of("A"))),
                new RankedBallot(List.of(List.of("C"), List.of("A"), List.of("B")))));

    assertThat(doubt(circle, "A")).contains(new NoAnswer(Cause.CYCLE, List.of("A", "B", "C")));
  }

  @Test
  void a_result_must_be_among_the_options_and_stand_there_once() {
    assertThatThrownBy(() -> doubt(NOMINAL_GROUP, "F"))
        .hasMessage("result is F: it is none of the options A, B, C, D, E");
    assertThatThrownBy(() -> doubt(NOMINAL_GROUP, "A", "A"))
        .hasMessage("result is A: it stands here twice; name it once");
  }

  /** Three fingers or more from everybody pass; a fist stops it. */
  @Test
  void a_proposal_is_what_the_count_says_it_is() {
    assertThat(proposal(List.of(5, 3, 3), Verdict.PASSED)).isEmpty();
    assertThat(proposal(List.of(5, 3, 0), Verdict.PASSED))
        .contains(new OtherVerdict(Verdict.BLOCKED));
    assertThat(proposal(List.of(5, 3, 2), Verdict.PASSED))
        .contains(new OtherVerdict(Verdict.TO_BE_HEARD));
  }

  private static Optional<Doubt> proposal(List<Integer> fingers, Verdict stated) {
    return new Vote.Proposal(
            "Shall we go on?", Method.FIST_TO_FIVE, new FistToFive(fingers), Optional.of(stated))
        .doubt();
  }
}
