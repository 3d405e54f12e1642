package org.arcwright.testkit;

import org.arcwright.brief.Brief;
import org.arcwright.compose.Composition.NothingFits;

/** That nothing fits, and what is expected to be said of it. */
public final class NoAgenda {
  private final Brief brief;
  private final NothingFits answer;

  NoAgenda(Brief brief, NothingFits answer) {
    this.brief = brief;
    this.answer = answer;
  }

  /** The answer itself. */
  public NothingFits answer() {
    return answer;
  }

  /**
   * One of the reasons must hold that text.
   *
   * @throws AssertionError if none does
   */
  public NoAgenda saying(String text) {
    if (answer.reasons().stream().noneMatch(reason -> reason.contains(text))) {
      throw Outcome.failure(
          brief,
          "a reason with \""
              + text
              + "\" was expected, but they are: "
              + String.join(" ", answer.reasons()));
    }
    return this;
  }
}
