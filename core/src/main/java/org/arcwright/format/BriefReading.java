package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Brief;

/**
 * What came of reading a brief.
 *
 * @param brief nothing if there are problems
 * @param problems what is wrong, in the order of places
 * @param hints what is allowed but odd, in the order of places
 */
public record BriefReading(Optional<Brief> brief, List<Problem> problems, List<Problem> hints) {
  /** Takes copies. */
  public BriefReading {
    problems = List.copyOf(problems);
    hints = List.copyOf(hints);
  }
}
