package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.arcwright.vote.Decision.Measure;
import org.arcwright.vote.MajorityRule.Base;
import org.arcwright.vote.Outcome.Cause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** More than half. */
class MajorityTest {
  private static final List<String> FOUR = List.of("A", "B", "C", "D");

  /**
   * ergofabulous.org, model constitution, "Who counts and how many do we need?": of 50 members 30
   * are present and 24 cast valid votes; a majority vote takes 13, of the members present 16, of
   * the entire membership 26.
   */
  @ParameterizedTest
  @CsvSource({"CAST, 13", "PRESENT, 16", "ENTITLED, 26"})
  void what_more_than_half_means(Base base, int needed) {
    assertThat(new MajorityRule(base, 50, 0).needed(24, 30)).isEqualTo(needed);
  }

  /** The same page: "If there are 30 votes, 15 is not a majority." */
  @Test
  void half_is_not_more_than_half() {
    MajorityRule rule = MajorityRule.ofVotesCast(30);

    assertThat(new Motion(15, 15, 0, rule).outcome()).isEqualTo(new ProposalOutcome.Level());
    assertThat(new Motion(16, 14, 0, rule).outcome()).isEqualTo(new ProposalOutcome.Passed());
    assertThat(new Motion(14, 16, 0, rule).outcome()).isEqualTo(new ProposalOutcome.Rejected());
  }

  /**
   * A question on the election-methods list, January 2006, answered from Robert's Rules: of 60
   * present 30 abstain, 20 vote yes and 10 no. Carried, unless a rule asks for more.
   */
  @Test
  void abstentions_are_no_votes() {
    assertThat(new Motion(20, 10, 30, MajorityRule.ofVotesCast(60)).outcome())
        .isEqualTo(new ProposalOutcome.Passed());
    assertThat(new Motion(20, 10, 30, new MajorityRule(Base.PRESENT, 60, 0)).outcome())
        .isEqualTo(new ProposalOutcome.Rejected());
  }

  @Test
  void whoever_abstains_counts_for_the_quorum() {
    MajorityRule rule = new MajorityRule(Base.CAST, 12, 7);

    assertThat(new Motion(2, 1, 4, rule).outcome()).isEqualTo(new ProposalOutcome.Passed());
    assertThat(new Motion(5, 1, 0, rule).outcome()).isEqualTo(new ProposalOutcome.NoQuorum(6, 7));
    assertThat(majority(rule, "AAA").outcome())
        .isEqualTo(none(Cause.NO_QUORUM, "A", "B", "C", "D"));
    assertThat(majority(rule, "AAB----").outcome()).isEqualTo(winner("A"));
  }

  @Test
  void more_than_half_of_the_marked_slips_win() {
    Majority vote = majority("AAABB-");

    assertThat(vote.cast()).isEqualTo(5);
    assertThat(vote.needed()).isEqualTo(3);
    assertThat(vote.scores().get(1).parts()).hasToString("[0, 0, 0, 1, 1, 0]");
    assertThat(vote.outcome()).isEqualTo(winner("A"));
  }

  @Test
  void without_more_than_half_the_two_strongest_go_on_and_whoever_is_level_with_them() {
    assertThat(majority("BBBAAC").outcome()).isEqualTo(none(Cause.NO_MAJORITY, "A", "B"));
    assertThat(majority("BBAC").outcome()).isEqualTo(none(Cause.NO_MAJORITY, "A", "B", "C"));
    assertThat(majority("AABBC").outcome()).isEqualTo(none(Cause.NO_MAJORITY, "A", "B"));
    assertThat(majority(new MajorityRule(Base.PRESENT, 3, 0), "A--").outcome())
        .isEqualTo(none(Cause.NO_MAJORITY, "A"));
    assertThat(majority("---").outcome()).isEqualTo(none(Cause.NO_VOTES, "A", "B", "C", "D"));
  }

  /** The exercise: "A tie goes to the item that had more people in the first count." */
  @Test
  void a_tie_in_the_second_round_goes_to_the_first_count() {
    Majority first = majority("BBBAAC");
    Majority second = majority(List.of("A", "B"), "BBBAAA");

    assertThat(second.outcome()).isEqualTo(tie("A", "B"));
    assertThat(second.decision(first).outcome()).isEqualTo(winner("B"));
    assertThat(second.decision(first).rounds())
        .extracting(Decision.Round::measure)
        .containsExactly(Measure.SUM, Measure.FIRST_COUNT);
    assertThat(majority(List.of("A", "B"), "BBAAAA").decision(first).rounds()).hasSize(1);
    assertThat(second.decision(majority("AB")).outcome()).isEqualTo(tie("A", "B"));
    assertThatThrownBy(() -> first.decision(second))
        .hasMessage("second round is C: one of A, B is right");
  }

  @Test
  void two_options_that_are_level_tie() {
    assertThat(majority(List.of("A", "B"), "AB-").outcome()).isEqualTo(tie("A", "B"));
    assertThat(sums(majority(List.of("A", "B"), "AB-"))).containsExactly("1", "1");
  }

  @Test
  void more_hands_than_people_are_counted_again() {
    assertThatThrownBy(() -> new Motion(6, 3, 2, MajorityRule.ofVotesCast(10)))
        .hasMessage("hands is 11: only 10 may vote; count again, or mend the number entitled");
    assertThatThrownBy(() -> new Motion(-1, 3, 2, MajorityRule.ofVotesCast(10)))
        .hasMessage("yes is -1: a whole number from 0 to 10 is right");
    assertThatThrownBy(() -> new Motion(1, -3, 2, MajorityRule.ofVotesCast(10)))
        .hasMessage("no is -3: a whole number from 0 to 10 is right");
    assertThatThrownBy(() -> new Motion(1, 3, -2, MajorityRule.ofVotesCast(10)))
        .hasMessage("abstentions is -2: a whole number from 0 to 10 is right");
    assertThatThrownBy(() -> MajorityRule.ofVotesCast(0))
        .hasMessage("entitled is 0: a whole number from 1 to 1000 is right");
    assertThatThrownBy(() -> majority(MajorityRule.ofVotesCast(2), "AAB"))
        .hasMessage("number of ballots is 3: a whole number from 0 to 2 is right");
    assertThatThrownBy(() -> majority("AX"))
        .hasMessage("ballot 2 is X: one of A, B, C, D is right");
    assertThatThrownBy(() -> new MajorityRule(Base.CAST, 10, 11))
        .hasMessage("quorum is 11: a whole number from 0 to 10 is right");
  }

  private static Majority majority(String votes) {
    return majority(FOUR, votes);
  }

  private static Majority majority(List<String> options, String votes) {
    return new Majority(options, MajorityRule.ofVotesCast(100), ballots(votes));
  }

  private static Majority majority(MajorityRule rule, String votes) {
    return new Majority(FOUR, rule, ballots(votes));
  }

  /** One letter for each ballot; a hyphen abstains. */
  private static List<Optional<String>> ballots(String votes) {
    return votes
        .chars()
        .mapToObj(c -> c == '-' ? Optional.<String>empty() : Optional.of(Character.toString(c)))
        .toList();
  }
}
