package org.arcwright.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.search.Limit;

/**
 * Finds ways to go on with a day that runs late, or early, or has to end at another time. What is
 * left becomes an instance of the composition problem and is solved exactly; to keep to the plan is
 * cheaper than anything else, so that the day stays recognisable. Immutable, so any number of
 * threads may share one.
 *
 * <p>The work is a handful of searches for each exercise still planned, most of them over these
 * alone.
 */
public final class Replanner {
  /** As likely in time as not. */
  private static final double EVEN = 0.5;

  private final Catalog catalog;

  private Replanner(Catalog catalog) {
    this.catalog = catalog;
  }

  /** A replanner that takes exercises from that catalog. */
  public static Replanner of(Catalog catalog) {
    return new Replanner(catalog);
  }

  /**
   * Finds the ways.
   *
   * @param brief of the agenda
   * @param agenda as it was planned
   * @param stand where the day stands
   * @param movable ids of what may be moved although the brief ties it to a time
   * @param limit of each search
   * @throws InvalidValueException if the brief names what the catalog does not have, or a movable
   *     id that is tied to no time
   */
  public Replan replan(Brief brief, Agenda agenda, Stand stand, Set<String> movable, Limit limit) {
    Rest rest = new Rest(Reducer.reduce(brief, catalog, () -> false), agenda, stand, movable);
    for (String id : movable) {
      if (!rest.untied.containsKey(id)) {
        throw new InvalidValueException(
            "may-move", id, "nothing of that id is tied to a time that is still to come");
      }
    }
    Workbench bench = new Workbench(rest, limit);
    Replan.Unchanged unchanged = bench.unchanged();
    Duration behind = unchanged.agenda().end().minus(agenda.end());
    List<Way> ways = new ArrayList<>();
    Optional<Replan.FollowUp> followUp = Optional.empty();
    boolean fine = unchanged.keeps() && (bench.isSure() || onPlan(behind, rest));
    if (fine) {
      ways.add(bench.carryOn());
    }
    if (fine && behind.toMinutes() <= -rest.grid) {
      ways.addAll(new EarlyWays(bench).find((int) -behind.toMinutes()));
    } else if (!fine || behind.toMinutes() >= rest.grid) {
      LateWays late = new LateWays(bench, wanted(rest));
      List<Way> found = new ArrayList<>(late.find());
      double surest = found.stream().mapToDouble(Way::onTime).max().orElse(0);
      if (!fine && !Workbench.isSure(surest)) {
        late.anew().filter(way -> way.onTime() > surest).ifPresent(found::add);
      }
      ways.addAll(beside(bench, ranked(found)));
      if (ways.isEmpty() && unchanged.keeps()) {
        ways.add(bench.carryOn());
      }
      if (ways.isEmpty()) {
        PartWay part = PartWay.find(bench);
        part.way().ifPresent(ways::add);
        followUp = Optional.of(part.followUp());
      }
    }
    return new Replan(
        stand.now(),
        stand.end(),
        behind,
        unchanged,
        ways.subList(0, Math.min(Replan.MOST, ways.size())),
        followUp);
  }

  /**
   * The ways, and beside them what can still be done well if none is more likely in time than not.
   */
  private static List<Way> beside(Workbench bench, List<Way> ways) {
    double surest = ways.stream().mapToDouble(Way::onTime).max().orElse(1);
    if (surest >= EVEN) {
      return ways;
    }
    List<Way> more = new ArrayList<>(ways.subList(0, Math.min(Replan.MOST - 1, ways.size())));
    Optional<Way> part = PartWay.likely(bench, EVEN);
    part.ifPresent(more::add);
    return part.isPresent() ? more : ways;
  }

  private static boolean onPlan(Duration behind, Rest rest) {
    return behind.toMinutes() < rest.grid && rest.stand.end().compareTo(rest.agenda.cap()) >= 0;
  }

  /** Those that are sure enough come first, the cheapest of them before all; then the surest. */
  private static List<Way> ranked(List<Way> ways) {
    return ways.stream()
        .sorted(
            Comparator.comparing((Way way) -> !Workbench.isSure(way.onTime()))
                .thenComparing(way -> Workbench.isSure(way.onTime()) ? way.cost() : -way.onTime()))
        .toList();
  }

  /** The same share of the work kept free as the plan had, down to the grid. */
  private static int wanted(Rest rest) {
    long free = rest.agenda.cap().minus(rest.agenda.end()).toMinutes();
    long whole = sum(rest.agenda.activities());
    long ahead = sum(rest.planned());
    return (int) (whole == 0 ? 0 : free * ahead / whole / rest.grid * rest.grid);
  }

  private static long sum(List<Activity> activities) {
    return activities.stream().mapToLong(activity -> activity.length().toMinutes()).sum();
  }
}
