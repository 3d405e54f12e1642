package org.arcwright.compose;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.compose.instance.Instance;

/** A composer's answer. */
public sealed interface Composition {
  /** The exercises that the brief does not allow, by id, each with the reason. */
  List<LeftOut> leftOut();

  /** What the brief and the catalog were reduced to. */
  Instance instance();

  /**
   * An agenda.
   *
   * @param agenda it
   * @param proof how sure it is
   * @param prices what its exercises cost by themselves, in the agenda's order; these add up to the
   *     exercises' part of its cost
   * @param leftOut what the brief does not allow
   * @param instance what was solved
   */
  record Composed(
      Agenda agenda, Proof proof, List<Price> prices, List<LeftOut> leftOut, Instance instance)
      implements Composition {
    /** Copies the lists. */
    public Composed {
      prices = List.copyOf(prices);
      leftOut = List.copyOf(leftOut);
    }
  }

  /**
   * No agenda keeps to the brief.
   *
   * @param reasons what stands in the way, the plainest first, in a facilitator's words
   * @param leftOut what the brief does not allow
   * @param instance what was solved
   */
  record NothingFits(List<String> reasons, List<LeftOut> leftOut, Instance instance)
      implements Composition {
    /** Copies the lists. */
    public NothingFits {
      reasons = List.copyOf(reasons);
      leftOut = List.copyOf(leftOut);
    }
  }

  /**
   * The budget ended, or somebody cancelled, before any agenda was found or ruled out.
   *
   * @param bound no agenda costs less than this, if that much is known
   * @param labels search steps taken
   * @param leftOut what the brief does not allow
   * @param instance what was to be solved
   */
  record Stopped(Optional<Long> bound, long labels, List<LeftOut> leftOut, Instance instance)
      implements Composition {
    /** Copies the list. */
    public Stopped {
      leftOut = List.copyOf(leftOut);
    }
  }
}
