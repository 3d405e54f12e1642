package org.arcwright.record;

import java.util.List;
import org.arcwright.vote.Outcome;

/** Why a result that was stated does not follow from the figures of its vote. */
public sealed interface Doubt {
  /** Others are ahead; they are named, the first first. */
  record OthersAhead(List<String> options) implements Doubt {
    /** Takes a copy. */
    public OthersAhead {
      options = List.copyOf(options);
    }
  }

  /** These are level, so that the figures alone choose none of them. */
  record Level(List<String> options) implements Doubt {
    /** Takes a copy. */
    public Level {
      options = List.copyOf(options);
    }
  }

  /** The method gives no answer; the options are those still in question. */
  record NoAnswer(Outcome.Cause cause, List<String> options) implements Doubt {
    /** Takes a copy. */
    public NoAnswer {
      options = List.copyOf(options);
    }
  }

  /** The figures say something else of the proposal. */
  record OtherVerdict(Verdict verdict) implements Doubt {}
}
