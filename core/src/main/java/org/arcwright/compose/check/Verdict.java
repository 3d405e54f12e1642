package org.arcwright.compose.check;

import java.util.List;
import org.arcwright.agenda.Figures;

/**
 * What a checker found.
 *
 * @param findings each rule that is broken, in the order of time; empty if the items are feasible
 * @param cost of the items with its parts, as if they were feasible
 * @param tie breaks ties among equal costs: the sum of the items' hashes
 */
public record Verdict(List<Finding> findings, Figures.Cost cost, long tie) {
  /** Copies the list. */
  public Verdict {
    findings = List.copyOf(findings);
  }

  /** Whether every rule holds. */
  public boolean feasible() {
    return findings.isEmpty();
  }
}
