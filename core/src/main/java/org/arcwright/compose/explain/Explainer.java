package org.arcwright.compose.explain;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.reduce.Refusal;

/**
 * Explains a composer's answers. Immutable and without state between calls, so any number of
 * threads may share one. Each explanation keeps to a budget of its own; what it could not find out
 * within it, it says.
 */
public final class Explainer {
  private final Catalog catalog;
  private final InstantSource clock;

  private Explainer(Catalog catalog, InstantSource clock) {
    this.catalog = catalog;
    this.clock = clock;
  }

  /** An explainer that keeps its time budget by the system's clock. */
  public static Explainer of(Catalog catalog) {
    return of(catalog, InstantSource.system());
  }

  /** An explainer that keeps its time budget by that clock; nothing else depends on it. */
  public static Explainer of(Catalog catalog, InstantSource clock) {
    return new Explainer(catalog, clock);
  }

  /** As {@link #whyNothingFits(Brief, NothingFits, Budget, Cancel)}; nobody cancels. */
  public Clash whyNothingFits(Brief brief, NothingFits answer, Budget budget) {
    return whyNothingFits(brief, answer, budget, Cancel.NEVER);
  }

  /**
   * Finds a smallest set of a brief's wishes that clash (QuickXplain, Junker 2004), and for each
   * wish the least that must be given up about it. Takes some dozens of searches, each until a
   * first agenda is found or ruled out.
   *
   * @param answer the composer's to that brief
   */
  public Clash whyNothingFits(Brief brief, NothingFits answer, Budget budget, Cancel cancel) {
    Effort effort = Effort.of(budget, cancel, clock);
    return new Mediation(brief, catalog, answer.instance().grid(), effort, clock).clash();
  }

  /** As {@link #whyThis(Brief, Composed, Budget, Cancel)}; nobody cancels. */
  public WhyThis whyThis(Brief brief, Composed composed, Budget budget) {
    return whyThis(brief, composed, budget, Cancel.NEVER);
  }

  /**
   * Tells for each exercise of an agenda what it takes over and hands on, where it stands, and the
   * next best in its place: of all others that fit there with all else as it is, the one that makes
   * the cheapest agenda, which is exact and takes no search. Only where none fits, the best agenda
   * without the exercise is composed. Looks at candidates times lengths times exercises.
   *
   * @param composed the composer's answer to that brief
   */
  public WhyThis whyThis(Brief brief, Composed composed, Budget budget, Cancel cancel) {
    Effort effort = Effort.of(budget, cancel, clock);
    return new Reasons(brief, catalog, composed.agenda(), effort, clock).all();
  }

  /** As {@link #whyNot(Brief, Agenda, String, Budget, Cancel)}; nobody cancels. */
  public WhyNot whyNot(Brief brief, Agenda agenda, String exercise, Budget budget) {
    return whyNot(brief, agenda, exercise, budget, Cancel.NEVER);
  }

  /**
   * Finds out why an exercise is not in an agenda: composes again with the wish that it is in.
   *
   * @param agenda for the brief, composed or written by hand
   * @param exercise id of an exercise in the catalog
   * @throws InvalidValueException if the catalog does not have the exercise
   */
  public WhyNot whyNot(Brief brief, Agenda agenda, String exercise, Budget budget, Cancel cancel) {
    Optional<AgendaItem.Activity> in =
        agenda.activities().stream().filter(a -> a.exercise().equals(exercise)).findFirst();
    if (in.isPresent()) {
      return new WhyNot.IsIn(in.get());
    }
    if (catalog.exercise(exercise).isEmpty()) {
      throw new InvalidValueException("exercise", exercise, "the catalog has none of that name");
    }
    Effort effort = Effort.of(budget, cancel, clock);
    if (brief.wishes().leaveOut().contains(exercise)) {
      return new WhyNot.RuledOut(
          new LeftOut(exercise, Refusal.BY_NAME.field(), Refusal.BY_NAME.reason()),
          new Clash(List.of(), List.of(), true));
    }
    Brief wished = Draft.of(brief).include(exercise).brief();
    Composition answer = Composer.of(catalog, clock).compose(wished, effort.part(2), cancel);
    if (answer instanceof Composed composed) {
      return new WhyNot.Possible(composed);
    }
    if (!(answer instanceof NothingFits nothing)) {
      return new WhyNot.Unknown();
    }
    Clash clash = new Mediation(wished, catalog, nothing.instance().grid(), effort, clock).clash();
    return nothing.leftOut().stream()
        .filter(leftOut -> leftOut.exercise().equals(exercise))
        .findFirst()
        .<WhyNot>map(leftOut -> new WhyNot.RuledOut(leftOut, clash))
        .orElseGet(() -> new WhyNot.Impossible(clash));
  }
}
