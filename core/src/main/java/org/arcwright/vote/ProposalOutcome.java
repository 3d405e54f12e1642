package org.arcwright.vote;

import java.util.List;

/** What a vote on one proposal says. People are numbered from 1, in the order of the ballots. */
public sealed interface ProposalOutcome {
  /** The proposal is adopted. */
  record Passed() implements ProposalOutcome {}

  /** The proposal is not adopted. */
  record Rejected() implements ProposalOutcome {}

  /** As many are for it as against it. */
  record Level() implements ProposalOutcome {}

  /** Somebody stops it, and has to say why. */
  record Blocked(List<Integer> people) implements ProposalOutcome {
    /** Copies the list. */
    public Blocked {
      people = List.copyOf(people);
    }
  }

  /** Nobody stops it, but some need a change first. */
  record ToBeHeard(List<Integer> people) implements ProposalOutcome {
    /** Copies the list. */
    public ToBeHeard {
      people = List.copyOf(people);
    }
  }

  /** Too few people are present to decide. */
  record NoQuorum(int present, int quorum) implements ProposalOutcome {}
}
