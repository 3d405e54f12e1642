package org.arcwright.vote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.arcwright.vote.Consent.Voice;
import org.arcwright.vote.ProposalOutcome.Blocked;
import org.arcwright.vote.ProposalOutcome.Passed;
import org.arcwright.vote.ProposalOutcome.ToBeHeard;
import org.junit.jupiter.api.Test;

/**
 * One proposal, fingers or objections. The rules of the fingers are those of freechild.org,
 * "Fist-to-Five Consensus-Building": a fist is a way to block, fewer than three fingers are to be
 * heard, three or more from all are consensus.
 */
class ProposalTest {
  @Test
  void three_fingers_or_more_from_all_pass() {
    assertThat(new FistToFive(List.of(3, 5, 4, 3)).outcome()).isEqualTo(new Passed());
  }

  @Test
  void whoever_shows_fewer_than_three_is_to_be_heard() {
    FistToFive vote = new FistToFive(List.of(5, 2, 4, 1));

    assertThat(vote.outcome()).isEqualTo(new ToBeHeard(List.of(2, 4)));
    assertThat(vote.counts()).containsExactly(0, 1, 1, 0, 1, 1);
  }

  @Test
  void a_fist_blocks_and_the_others_are_heard_all_the_same() {
    FistToFive vote = new FistToFive(List.of(5, 5, 0, 2));

    assertThat(vote.outcome()).isEqualTo(new Blocked(List.of(3)));
    assertThat(vote.toBeHeard()).containsExactly(3, 4);
  }

  @Test
  void a_hand_has_five_fingers() {
    assertThatThrownBy(() -> new FistToFive(List.of(3, 6)))
        .hasMessage("ballot 2 is 6: a whole number from 0 to 5 is right");
    assertThatThrownBy(() -> new FistToFive(List.of()))
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
  }

  /** Common practice, no source: consent is the absence of reasoned objections. */
  @Test
  void without_a_reasoned_objection_a_proposal_passes() {
    assertThat(
            new Consent(
                    List.of(
                        new Voice.NoObjection(), new Voice.Reservation("I would like it blue.")))
                .outcome())
        .isEqualTo(new Passed());
  }

  @Test
  void one_reasoned_objection_holds_it_up() {
    Voice harm = new Voice.Objection("The night shift cannot read it.");

    assertThat(new Consent(List.of(new Voice.NoObjection(), harm)).outcome())
        .isEqualTo(new Blocked(List.of(2)));
  }

  @Test
  void an_objection_names_its_reason() {
    assertThatThrownBy(() -> new Voice.Objection(" "))
        .hasMessage("objection is empty: it needs a text");
    assertThatThrownBy(() -> new Consent(List.of()))
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
  }
}
