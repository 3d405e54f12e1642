package org.arcwright.gaps;

import java.time.Duration;
import java.util.List;

/**
 * Briefs with few agendas or none, and what would give them one more.
 *
 * @param goal id of the goal
 * @param tools where people are, and what is at hand
 * @param people how many
 * @param lengths of the briefs, ascending
 * @param agendas how many different agendas each has
 * @param drafts the exercises that are missing, mostly one; empty if no exercise would help
 */
public record Gap(
    String goal,
    ToolSet tools,
    int people,
    List<Duration> lengths,
    int agendas,
    List<Draft> drafts) {
  /** Takes copies. */
  public Gap {
    lengths = List.copyOf(lengths);
    drafts = List.copyOf(drafts);
  }
}
