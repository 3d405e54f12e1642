package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Yes to as many as one likes. */
class ApprovalTest {
  private static final List<String> THREE = List.of("1", "2", "3");

  /**
   * Wikiversity, "Selected topics in finite mathematics / Approval voting": 40, 25, 20 and 15
   * ballots, three of these groups for each candidate; 75, 60 and 85 yeses, candidate 3 elected.
   */
  @Test
  void a_hundred_people_and_three_candidates() {
    List<Set<String>> ballots = new ArrayList<>();
    ballots.addAll(Collections.nCopies(40, Set.of("1", "3")));
    ballots.addAll(Collections.nCopies(25, Set.of("2", "3")));
    ballots.addAll(Collections.nCopies(20, Set.of("1", "2", "3")));
    ballots.addAll(Collections.nCopies(15, Set.of("1", "2")));
    Approval vote = new Approval(THREE, ballots);

    assertThat(sums(vote)).containsExactly("75", "60", "85");
    assertThat(vote.outcome()).isEqualTo(winner("3"));
    assertThat(vote.backedByHalf()).isTrue();
  }

  @Test
  void each_ballot_shows_in_the_parts() {
    Approval vote = new Approval(THREE, List.of(Set.of("1", "2"), Set.of("2"), Set.of()));

    assertThat(vote.scores().get(1).parts()).hasToString("[1, 1, 0]");
    assertThat(vote.outcome()).isEqualTo(winner("2"));
  }

  @Test
  void level_options_tie_and_blank_ballots_are_no_result() {
    assertThat(new Approval(THREE, List.of(Set.of("3", "1"))).outcome()).isEqualTo(tie("1", "3"));
    assertThat(new Approval(THREE, List.of(Set.of())).outcome())
        .isEqualTo(none(Outcome.Cause.NO_VOTES, "1", "2", "3"));
  }

  /** The exercise: "If even the first item gets a yes from fewer than half, say so." */
  @Test
  void the_first_place_may_be_backed_by_fewer_than_half() {
    assertThat(new Approval(THREE, List.of(Set.of("1"), Set.of("2"))).backedByHalf()).isTrue();
    assertThat(new Approval(THREE, List.of(Set.of("1"), Set.of("2"), Set.of())).backedByHalf())
        .isFalse();
  }

  @Test
  void an_unknown_option_is_refused() {
    assertThatThrownBy(() -> new Approval(THREE, List.of(Set.of("1"), Set.of("4"))))
        .hasMessage("ballot 2 is 4: one of 1, 2, 3 is right");
    assertThatThrownBy(() -> new Approval(THREE, List.of()))
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
  }
}
