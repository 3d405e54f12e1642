package org.arcwright.vote;

/** A vote on one proposal, counted. */
public sealed interface ProposalVote permits Consent, FistToFive, Motion {
  /** What the vote says by the method's own rule. */
  ProposalOutcome outcome();
}
