package org.arcwright.live;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.arcwright.forecast.Forecaster;

/** What all ways are made with: the rest of the day, a search, a forecast. */
final class Workbench {
  /**
   * What a search came to.
   *
   * @param instance what was solved
   * @param solution its items, or that nothing fits
   */
  record Found(Instance instance, Solution solution) {
    boolean fits() {
      return !solution.items().isEmpty();
    }

    /** Whether this is proven. */
    boolean conclusive() {
      return solution.status() == Solution.Status.OPTIMAL
          || solution.status() == Solution.Status.INFEASIBLE;
    }
  }

  private final Rest rest;
  private final Limit limit;
  private final Forecaster forecaster;
  private final CarryOn carryOn;
  private final double carryOnOnTime;

  Workbench(Rest rest, Limit limit) {
    this.rest = rest;
    this.limit = limit;
    this.forecaster = Forecaster.of(rest.base.catalog());
    this.carryOn = CarryOn.of(rest);
    this.carryOnOnTime = onTime(carryOn.agenda());
  }

  Rest rest() {
    return rest;
  }

  /** What follows if nothing changes. */
  Replan.Unchanged unchanged() {
    return new Replan.Unchanged(carryOn.agenda(), carryOn.keeps(), carryOnOnTime);
  }

  boolean isSure() {
    return isSure(carryOnOnTime);
  }

  static boolean isSure(double onTime) {
    return 100 * onTime >= ReplanPrices.SURE;
  }

  /** To change nothing, which costs nothing beside what the plan costs anyway. */
  Way carryOn() {
    return way(Way.Kind.CARRY_ON, carryOn.agenda(), carryOn.cost(), true);
  }

  /** Solves an instance, if there is one. */
  Optional<Found> solve(Optional<Instance> instance) {
    return instance.map(each -> new Found(each, Search.solve(each, limit)));
  }

  /**
   * A way from what was found.
   *
   * @param more points beside the instance's own
   * @param best whether it is proven the best of its kind
   */
  Way way(Way.Kind kind, Found found, long more, boolean best) {
    List<String> phases = found.instance().phases().stream().map(Instance.Phase::name).toList();
    Agenda agenda = DayAgenda.of(rest, phases, found.solution().items());
    return way(kind, agenda, found.solution().cost() + more, best);
  }

  /** To end what runs with the day and leave out the rest; nothing if nothing runs. */
  Optional<Way> stop() {
    return rest.running.map(
        running -> {
          int from = RestInstance.origin(rest) + rest.worked;
          Item.Activity cut =
              new Item.Activity(
                  running.activity().exercise(), rest.phase, rest.worked, rest.end - from);
          return way(Way.Kind.PART, DayAgenda.of(rest, List.of(), List.of(cut)), 0, true);
        });
  }

  private Way way(Way.Kind kind, Agenda agenda, long cost, boolean best) {
    return new Way(
        kind,
        agenda,
        Changes.of(rest, carryOn.agenda(), agenda),
        Changes.lost(rest, carryOn.agenda(), agenda),
        onTime(agenda),
        cost,
        best);
  }

  private double onTime(Agenda agenda) {
    return forecaster.forecast(agenda, rest.base.brief(), rest.stand.now()).onTime();
  }
}
