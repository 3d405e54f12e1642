package org.arcwright.record;

import org.arcwright.catalog.Word;
import org.arcwright.vote.ProposalOutcome;
import org.arcwright.vote.ProposalOutcome.Blocked;
import org.arcwright.vote.ProposalOutcome.Level;
import org.arcwright.vote.ProposalOutcome.NoQuorum;
import org.arcwright.vote.ProposalOutcome.Passed;
import org.arcwright.vote.ProposalOutcome.ToBeHeard;

/** What became of a proposal, in a word. */
public enum Verdict implements Word {
  /** It was adopted. */
  PASSED("passed"),
  /** It was not. */
  REJECTED("rejected"),
  /** As many were for it as against it. */
  LEVEL("level"),
  /** Somebody stopped it. */
  BLOCKED("blocked"),
  /** Some need a change first. */
  TO_BE_HEARD("to-be-heard"),
  /** Too few were present. */
  NO_QUORUM("no-quorum");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** The word for what a count says. */
  public static Verdict of(ProposalOutcome outcome) {
    if (outcome instanceof Passed) {
      return PASSED;
    }
    if (outcome instanceof Level) {
      return LEVEL;
    }
    if (outcome instanceof Blocked) {
      return BLOCKED;
    }
    if (outcome instanceof ToBeHeard) {
      return TO_BE_HEARD;
    }
    return outcome instanceof NoQuorum ? NO_QUORUM : REJECTED;
  }
}
