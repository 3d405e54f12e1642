package org.arcwright.compose;

import java.util.List;

/**
 * Different agendas for one brief: no two of them share more than half of their exercises, half of
 * the shorter one's. The first is the best of all; each other one keeps to the brief, but may be
 * worse. There may be more than are found, for they are looked for one after another.
 *
 * @param agendas the ids of each one's exercises, in their order; empty if nothing fits
 * @param counted false if the budget or a person ended the search before it was done
 */
public record Variety(List<List<String>> agendas, boolean counted) {
  /** Takes copies. */
  public Variety {
    agendas = agendas.stream().map(List::copyOf).toList();
  }
}
