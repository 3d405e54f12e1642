package org.arcwright.standin;

import java.util.HashSet;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;

/**
 * What one person can lead and mind at the same time, when the producer is not there. Two
 * facilitators are usual wherever somebody sits at a screen: one leads, one minds the tools. Common
 * practice, no source.
 */
final class Alone {
  private static final String CALL = "call";

  /** Somebody has to open the rooms, send people, bring them back, and be there for questions. */
  private static final String BREAKOUTS = "breakouts";

  /** So many tools beside the call can be minded while leading. Common practice, no source. */
  private static final int TOOLS_IN_SIGHT = 1;

  private Alone() {}

  /** Whether one person is enough. */
  static boolean canLead(Exercise exercise, Mode mode) {
    if (mode == Mode.IN_PERSON) {
      return true;
    }
    Set<String> tools = new HashSet<>(exercise.in(mode).tools());
    tools.remove(CALL);
    return !tools.contains(BREAKOUTS) && tools.size() <= TOOLS_IN_SIGHT;
  }
}
