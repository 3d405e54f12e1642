package org.arcwright.compose;

import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.AgendaBuilder;
import org.arcwright.compose.reduce.AgendaReader;
import org.arcwright.compose.reduce.CostPart;
import org.arcwright.compose.reduce.FiguresOf;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.search.OptionList;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.compose.search.OptionSearch;
import org.arcwright.compose.search.Solution;

/**
 * Composes agendas from a catalog: reduces a brief to an instance, searches it exactly and reads
 * the solution as an agenda. Immutable and without state between calls, so any number of threads
 * may share one.
 */
public final class Composer {
  private final Catalog catalog;
  private final InstantSource clock;
  private final Steps steps;

  private Composer(Catalog catalog, InstantSource clock, Steps steps) {
    this.catalog = catalog;
    this.clock = clock;
    this.steps = steps;
  }

  /** A composer that keeps its time budget by the system's clock. */
  public static Composer of(Catalog catalog) {
    return of(catalog, InstantSource.system());
  }

  /** A composer that keeps its time budget by that clock; nothing else depends on it. */
  public static Composer of(Catalog catalog, InstantSource clock) {
    return new Composer(catalog, clock, Steps.PLAIN);
  }

  /** The same composer with other steps. */
  Composer with(Steps others) {
    return new Composer(catalog, clock, others);
  }

  /** An allowance that begins now. */
  Allowance allowance(Budget budget, Cancel cancel) {
    return new Allowance(budget, cancel, clock);
  }

  /** Refuses a brief that cannot be composed, without composing it. */
  void refuse(Brief brief) {
    steps.reduce(brief, catalog, () -> true);
  }

  /**
   * Composes the best agenda for a brief. If neither the time nor a person ends it early, the same
   * brief and labels give the same answer everywhere.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget) {
    return compose(brief, budget, Cancel.NEVER);
  }

  /**
   * As {@link #compose(Brief, Budget)}, until somebody cancels or the thread is interrupted; then
   * the best so far is the answer, and the thread's interrupt flag stays up.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget, Cancel cancel) {
    return compose(brief, budget, cancel, Listener.NONE);
  }

  /**
   * As {@link #compose(Brief, Budget, Cancel)}, and tells a listener of each better agenda and
   * bound.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition compose(Brief brief, Budget budget, Cancel cancel, Listener listener) {
    return compose(brief, allowance(budget, cancel), listener);
  }

  /**
   * As {@link #compose(Brief, Budget)}, without some of the exercises that the brief allows. All
   * else of the problem stays as it is: the answer keeps to the brief, and what it costs can be
   * held against what the best of all costs.
   *
   * @param without why each of them, by its id, in words that may follow its title and a colon
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Composition composeWithout(Map<String, String> without, Brief brief, Budget budget) {
    Allowance allowance = allowance(budget, Cancel.NEVER);
    Reduction reduction = steps.reduce(brief, catalog, allowance::spent).without(without);
    return compose(reduction, allowance, Listener.NONE);
  }

  Composition compose(Brief brief, Allowance allowance, Listener listener) {
    return compose(steps.reduce(brief, catalog, allowance::spent), allowance, listener);
  }

  private Composition compose(Reduction reduction, Allowance allowance, Listener listener) {
    List<LeftOut> leftOut = leftOut(reduction);
    if (!reduction.complete()) {
      return new Composition.Stopped(Optional.empty(), 0, leftOut, reduction.instance());
    }
    Solution solution =
        steps.solve(reduction.instance(), allowance.limit(), reading(reduction, listener));
    return read(reduction, solution, leftOut, allowance);
  }

  private static Composition read(
      Reduction reduction, Solution solution, List<LeftOut> leftOut, Allowance allowance) {
    return switch (solution.status()) {
      case OPTIMAL, FEASIBLE ->
          new Composition.Composed(
              AgendaBuilder.build(reduction, solution.items()),
              proof(solution, allowance.elapsed()),
              prices(reduction, solution.items()),
              leftOut,
              reduction.instance());
      case INFEASIBLE ->
          new Composition.NothingFits(Diagnosis.reasons(reduction), leftOut, reduction.instance());
      case STOPPED ->
          new Composition.Stopped(
              Optional.of(solution.bound()).filter(bound -> bound > 0),
              solution.labels(),
              leftOut,
              reduction.instance());
    };
  }

  /** As {@link #options(Brief, OptionRule, Budget, Cancel)}, with nobody to cancel. */
  public Options options(Brief brief, OptionRule rule, Budget budget) {
    return options(brief, rule, budget, Cancel.NEVER);
  }

  /**
   * Composes several agendas to choose from: the best, and beside it each the best of those that
   * share little enough with every one before it. Proven one by one, all within one budget.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Options options(Brief brief, OptionRule rule, Budget budget, Cancel cancel) {
    return options(brief, rule, allowance(budget, cancel));
  }

  Options options(Brief brief, OptionRule rule, Allowance allowance) {
    Reduction reduction = steps.reduce(brief, catalog, allowance::spent);
    List<LeftOut> leftOut = leftOut(reduction);
    if (!reduction.complete()) {
      return new Options.NotOne(
          rule, new Composition.Stopped(Optional.empty(), 0, leftOut, reduction.instance()));
    }
    OptionList list = OptionSearch.solve(reduction.instance(), rule, allowance.limit());
    List<Options.Option> options = new ArrayList<>();
    for (Solution solution : list.solutions()) {
      Composition composition = read(reduction, solution, leftOut, allowance);
      if (!(composition instanceof Composition.Composed composed)) {
        return new Options.NotOne(rule, composition);
      }
      options.add(new Options.Option(composed, Profile.of(composed.agenda(), catalog)));
    }
    Optional<Proof> beyond = list.next().map(next -> proof(next, allowance.elapsed()));
    return new Options.Found(rule, options, list.end(), beyond);
  }

  /** Passes on what a search tells, its items read as agendas. */
  private static org.arcwright.compose.search.Listener reading(
      Reduction reduction, Listener listener) {
    if (listener == Listener.NONE) {
      return org.arcwright.compose.search.Listener.NONE;
    }
    return new org.arcwright.compose.search.Listener() {
      @Override
      public void incumbent(long cost, List<Item> items) {
        listener.incumbent(AgendaBuilder.build(reduction, items), cost);
      }

      @Override
      public void bound(long cost) {
        listener.bound(cost);
      }
    };
  }

  /**
   * Looks for different agendas, to see how much choice a catalog gives. Two or three cost hardly
   * more than one, for most of them come from changing exercises for others.
   *
   * @param most how many are wanted, 1 or more
   * @param budget for all of them together
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Variety variety(Brief brief, int most, Budget budget, Cancel cancel) {
    if (most < 1) {
      throw new InvalidValueException("most", most, "a whole number over 0 is right");
    }
    Allowance allowance = allowance(budget, cancel);
    Reduction reduction = steps.reduce(brief, catalog, allowance::spent);
    return reduction.complete()
        ? VarietySearch.of(reduction.instance(), most, instance -> solve(instance, allowance))
        : new Variety(List.of(), false);
  }

  private Solution solve(Instance instance, Allowance allowance) {
    Solution solution =
        steps.solve(instance, allowance.limit(), org.arcwright.compose.search.Listener.NONE);
    allowance.charge(solution.labels());
    return solution;
  }

  /**
   * Checks an agenda, which may be written by hand, against a brief. Exercises that nobody knows
   * and anything else that is wrong with the agenda is remarked upon, not refused.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public Review check(Agenda agenda, Brief brief) {
    Reduction reduction = steps.reduce(brief, catalog, () -> false);
    List<Item> items = AgendaReader.items(reduction, agenda);
    List<Finding> findings = Checker.check(reduction.instance(), items).findings();
    return new Review(
        new Remarks(reduction, agenda).on(findings), FiguresOf.items(reduction, items));
  }

  /**
   * What the exercises of an agenda, which may be written by hand, cost by themselves with a brief.
   *
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public List<Price> prices(Agenda agenda, Brief brief) {
    Reduction reduction = steps.reduce(brief, catalog, () -> false);
    return prices(reduction, AgendaReader.items(reduction, agenda));
  }

  private static Proof proof(Solution solution, Duration time) {
    return new Proof(
        solution.status() == Solution.Status.OPTIMAL,
        solution.cost(),
        solution.bound(),
        solution.labels(),
        time);
  }

  private static List<Price> prices(Reduction reduction, List<Item> items) {
    List<Price> prices = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Activity activity) {
        for (CostPart part : reduction.costParts().apply(activity.id())) {
          prices.add(new Price(activity.id(), part.why(), part.points()));
        }
      }
    }
    return prices;
  }

  private static List<LeftOut> leftOut(Reduction reduction) {
    return reduction.leftOut().entrySet().stream()
        .map(
            entry ->
                new LeftOut(entry.getKey(), entry.getValue().field(), entry.getValue().reason()))
        .toList();
  }
}
