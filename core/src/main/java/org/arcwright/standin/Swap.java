package org.arcwright.standin;

import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * An exercise of an agenda that cannot be done as planned, and what takes its place.
 *
 * @param place of the exercise among the agenda's items, from 0
 * @param standIn the best there is, if there is any
 */
public record Swap(int place, Optional<StandIn> standIn) {
  /** Refuses a place before the first. */
  public Swap {
    Checks.range("place", place, 0, Integer.MAX_VALUE);
  }
}
