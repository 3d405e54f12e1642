package org.arcwright.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.live.Recipe.Extra;
import org.arcwright.live.Recipe.Sizes;

/**
 * Ways when time is short, each the best of its kind: all, but shorter or with breaks moved, one
 * for a shorter one, one left out. Each first tries to keep free at the close what the plan kept,
 * and the two that change one exercise first leave all others at their length.
 */
final class LateWays {
  private final Workbench bench;
  private final Rest rest;
  private final int wanted;

  /**
   * @param wanted minutes to keep free at the close, if they can be had
   */
  LateWays(Workbench bench, int wanted) {
    this.bench = bench;
    this.rest = bench.rest();
    this.wanted = wanted;
  }

  List<Way> find() {
    List<Way> ways = new ArrayList<>();
    shorten().filter(this::changesSomething).ifPresent(ways::add);
    swap().ifPresent(ways::add);
    leaveOut().ifPresent(ways::add);
    return ways;
  }

  /** It may be that only a break comes at another time. */
  private boolean changesSomething(Way way) {
    List<AgendaItem> unchanged = bench.unchanged().agenda().items();
    return !way.agenda().items().equals(unchanged);
  }

  private Optional<Way> shorten() {
    for (int free : List.of(wanted, wanted / 2 / rest.grid * rest.grid, 0)) {
      Choice choice = new Choice(bench);
      choice.add(RestInstance.of(rest, Recipe.of(rest.planned(), Recipe.SHORTER, free)), 0);
      if (choice.fits()) {
        return choice.way(Way.Kind.SHORTEN);
      }
    }
    return Optional.empty();
  }

  private Optional<Way> swap() {
    for (Attempt attempt : attempts()) {
      Choice choice = new Choice(bench);
      for (Activity out : optional()) {
        int phase = Math.max(rest.phase, rest.phaseNumber(out.phase()));
        Extra room = new Extra(phase, rest.planned(out) - ReplanPrices.LEAST_SAVING);
        choice.add(
            RestInstance.of(rest, attempt.without(rest, out).with(room)), ReplanPrices.LEFT_OUT);
      }
      if (choice.fits()) {
        return choice.way(Way.Kind.SWAP);
      }
    }
    return Optional.empty();
  }

  private Optional<Way> leaveOut() {
    for (Attempt attempt : attempts()) {
      Choice choice = new Choice(bench);
      for (Activity out : optional()) {
        int lost = ReplanPrices.leftOut(rest.planned(out));
        choice.add(RestInstance.of(rest, attempt.without(rest, out)), lost);
      }
      if (choice.fits()) {
        return choice.way(Way.Kind.LEAVE_OUT);
      }
    }
    return Optional.empty();
  }

  /** Whatever leads to the goal from here; planned exercises are still the cheapest. */
  Optional<Way> anew() {
    List<Integer> all = IntStream.range(rest.phase, rest.base.goal().arc().size()).boxed().toList();
    for (int free : List.of(wanted, 0)) {
      Choice choice = new Choice(bench);
      choice.add(RestInstance.anew(rest, all, true, free), 0);
      if (all.size() > 1) {
        choice.add(RestInstance.anew(rest, all.subList(1, all.size()), true, free), 0);
      }
      if (choice.fits()) {
        return choice.way(Way.Kind.ANEW);
      }
    }
    return Optional.empty();
  }

  /** How to try what takes one exercise out. */
  private record Attempt(Sizes sizes, int free) {
    Recipe without(Rest rest, Activity out) {
      List<Activity> kept = rest.planned().stream().filter(each -> !each.equals(out)).toList();
      return Recipe.of(kept, sizes, free);
    }
  }

  private List<Attempt> attempts() {
    return List.of(
        new Attempt(Recipe.PLANNED, wanted),
        new Attempt(Recipe.SHORTER, wanted),
        new Attempt(Recipe.SHORTER, 0));
  }

  /** What nobody has asked for by name. */
  private List<Activity> optional() {
    return rest.planned().stream()
        .filter(each -> !rest.base.instance().include().contains(each.exercise()))
        .filter(each -> !rest.tied.containsKey(each.exercise()))
        .filter(each -> !rest.untied.containsKey(each.exercise()))
        .toList();
  }
}
