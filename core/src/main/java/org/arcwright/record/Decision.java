package org.arcwright.record;

import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * What was decided.
 *
 * @param what in the group's words, at most 2,000 characters
 * @param how it was reached, such as "a round of consent"
 * @param by who decided, such as "all nine present"
 * @param why what spoke for it
 * @param votes that led to it, in order
 */
public record Decision(
    String what,
    Optional<String> how,
    Optional<String> by,
    Optional<String> why,
    List<Vote> votes) {
  /** Refuses empty texts. */
  public Decision {
    what = Checks.text("what", what, 2000);
    how = how.map(text -> Checks.text("how", text, 400));
    by = by.map(text -> Checks.text("by", text, 400));
    why = why.map(text -> Checks.text("why", text, 1000));
    votes = List.copyOf(votes);
  }

  /** What a log knows of one: the words alone. */
  static Decision of(String what) {
    return new Decision(what, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }
}
