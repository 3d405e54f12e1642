package org.arcwright.compose;

import java.time.Duration;
import java.util.List;
import org.arcwright.agenda.Figures;

/**
 * What there is to say about an agenda that somebody wrote.
 *
 * @param remarks each rule that it breaks, in the order of time; empty if it keeps to the brief
 * @param figures what can be counted about it
 */
public record Review(List<Remark> remarks, Figures figures) {
  /**
   * A rule that the agenda breaks.
   *
   * @param rule its number in the statement of the composition problem, 1 to 8
   * @param at the time it is about, from the workshop's start
   * @param text what is wrong, where, and how to mend it, in a facilitator's words
   */
  public record Remark(int rule, Duration at, String text) {}

  /** Copies the list. */
  public Review {
    remarks = List.copyOf(remarks);
  }

  /** Whether the agenda keeps to the brief. */
  public boolean fits() {
    return remarks.isEmpty();
  }
}
