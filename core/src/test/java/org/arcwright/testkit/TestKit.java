package org.arcwright.testkit;

import java.util.Collection;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;

/** Where a test of a catalog or of rules begins. Immutable. */
public final class TestKit {
  private final Composer composer;
  private final Budget budget;

  private TestKit(Composer composer, Budget budget) {
    this.composer = composer;
    this.budget = budget;
  }

  /** Tests what can be composed from a catalog. */
  public static TestKit of(Catalog catalog) {
    return of(Composer.of(catalog));
  }

  /** Tests what a composer composes, its rules included. */
  public static TestKit of(Composer composer) {
    return new TestKit(composer, Budget.USUAL);
  }

  /** The same with another budget for each brief. */
  public TestKit within(Budget other) {
    return new TestKit(composer, other);
  }

  /** Composes a brief; say next what is expected. */
  public Outcome brief(Brief brief) {
    return new Outcome(composer, brief, composer.compose(brief, budget));
  }

  /**
   * Each of the briefs must compose, be proven best and keep to its brief.
   *
   * @throws AssertionError about the first that does not
   */
  public void allCompose(Collection<Brief> briefs) {
    briefs.forEach(brief -> brief(brief).composes());
  }
}
