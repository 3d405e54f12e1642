package org.arcwright.vote;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;

/**
 * A round in which each person objects or does not. The proposal passes when no reasoned objection
 * is left; a wish for something nicer does not hold it up.
 *
 * @param voices one for each person
 */
public record Consent(List<Voice> voices) implements ProposalVote {
  /** What one person says in the round. */
  public sealed interface Voice {
    /** Nothing speaks against it. */
    record NoObjection() implements Voice {}

    /** A wish or a doubt, noted and no objection. */
    record Reservation(String text) implements Voice {
      /** Refuses an empty text. */
      public Reservation {
        text = Checks.text("reservation", text, 1000);
      }
    }

    /** The harm that the proposal would do. */
    record Objection(String reason) implements Voice {
      /** Refuses an objection without a reason. */
      public Objection {
        reason = Checks.text("objection", reason, 1000);
      }
    }
  }

  /** Copies the list; refuses a round of nobody. */
  public Consent {
    Ballots.count(voices);
    voices = List.copyOf(voices);
  }

  /** Whoever objects, numbered from 1. */
  public List<Integer> objectors() {
    return IntStream.range(0, voices.size())
        .filter(i -> voices.get(i) instanceof Voice.Objection)
        .mapToObj(i -> i + 1)
        .toList();
  }

  @Override
  public ProposalOutcome outcome() {
    List<Integer> objectors = objectors();
    return objectors.isEmpty()
        ? new ProposalOutcome.Passed()
        : new ProposalOutcome.Blocked(objectors);
  }
}
