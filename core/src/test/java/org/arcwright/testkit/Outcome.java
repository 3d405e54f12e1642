package org.arcwright.testkit;

import org.arcwright.brief.Brief;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Review;

/** What came of a brief, before anything is expected of it. */
public final class Outcome {
  private final Composer composer;
  private final Brief brief;
  private final Composition answer;

  Outcome(Composer composer, Brief brief, Composition answer) {
    this.composer = composer;
    this.brief = brief;
    this.answer = answer;
  }

  /** The answer itself. */
  public Composition answer() {
    return answer;
  }

  /**
   * There must be an agenda, proven best, and it must keep to the brief.
   *
   * @throws AssertionError if not, with the reasons
   */
  public ComposedAgenda composes() {
    if (!(answer instanceof Composed composed)) {
      throw failure("an agenda was expected, but " + instead());
    }
    if (!composed.proof().best()) {
      throw failure(
          "a proven agenda was expected, but the budget ended at a cost of "
              + composed.proof().cost()
              + " and a bound of "
              + composed.proof().bound());
    }
    Review review = composer.check(composed.agenda(), brief);
    if (!review.fits()) {
      throw failure("the agenda breaks its brief: " + review.remarks().get(0).text());
    }
    return new ComposedAgenda(brief, composed);
  }

  /**
   * Nothing must fit.
   *
   * @throws AssertionError if there is an agenda, or if nobody knows
   */
  public NoAgenda fitsNothing() {
    if (!(answer instanceof NothingFits nothing)) {
      throw failure("it was expected that nothing fits, but " + instead());
    }
    return new NoAgenda(brief, nothing);
  }

  private String instead() {
    if (answer instanceof Composed composed) {
      return "there is an agenda: " + ComposedAgenda.list(composed.agenda());
    }
    if (answer instanceof NothingFits nothing) {
      return "nothing fits: " + String.join(" ", nothing.reasons());
    }
    return "the budget ended before anything was found or ruled out";
  }

  private AssertionError failure(String text) {
    return failure(brief, text);
  }

  static AssertionError failure(Brief brief, String text) {
    return new AssertionError("Brief \"" + brief.title() + "\": " + text);
  }
}
