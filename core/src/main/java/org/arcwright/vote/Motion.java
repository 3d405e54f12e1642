package org.arcwright.vote;

import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * A show of hands on one proposal.
 *
 * @param yes hands for it
 * @param no hands against it
 * @param abstentions people present who show neither
 * @param rule of what more than half is asked, and the quorum
 */
public record Motion(int yes, int no, int abstentions, MajorityRule rule) implements ProposalVote {
  /** Refuses negative counts, and more hands than people who may vote. */
  public Motion {
    Checks.range("yes", yes, 0, rule.entitled());
    Checks.range("no", no, 0, rule.entitled());
    Checks.range("abstentions", abstentions, 0, rule.entitled());
    if (yes + no + abstentions > rule.entitled()) {
      throw new InvalidValueException(
          "hands",
          yes + no + abstentions,
          "only " + rule.entitled() + " may vote; count again, or mend the number entitled");
    }
  }

  /** Votes for and against and abstentions. */
  public int present() {
    return yes + no + abstentions;
  }

  /** The fewest hands that carry it. */
  public int needed() {
    return rule.needed(yes + no, present());
  }

  /** Passed with more than half, level with as many for as against, rejected otherwise. */
  @Override
  public ProposalOutcome outcome() {
    if (present() < rule.quorum()) {
      return new ProposalOutcome.NoQuorum(present(), rule.quorum());
    }
    if (yes >= needed()) {
      return new ProposalOutcome.Passed();
    }
    return yes == no ? new ProposalOutcome.Level() : new ProposalOutcome.Rejected();
  }
}
