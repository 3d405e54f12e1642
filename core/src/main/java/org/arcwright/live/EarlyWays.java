package org.arcwright.live;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.live.Recipe.Extra;
import org.arcwright.live.Recipe.Sizes;

/** What gained minutes are best used for, so that the day ends when it was planned to. */
final class EarlyWays {
  private final Workbench bench;
  private final Rest rest;

  EarlyWays(Workbench bench) {
    this.bench = bench;
    this.rest = bench.rest();
  }

  /**
   * Finds the exercise that gains most from more time, and the best exercise to add.
   *
   * @param gained minutes
   */
  List<Way> find(int gained) {
    int free = Math.max(0, rest.end - (int) rest.agenda.end().toMinutes());
    List<Way> ways = new ArrayList<>();
    Choice linger = new Choice(bench);
    List<Activity> all = new ArrayList<>(rest.planned());
    rest.running.ifPresent(running -> all.add(0, running.activity()));
    for (Activity each : all) {
      Sizes sizes = new Sizes.Longer(each.exercise());
      linger.add(RestInstance.of(rest, Recipe.of(rest.planned(), sizes, free)), 0);
    }
    linger.way(Way.Kind.LINGER).filter(way -> !way.changes().isEmpty()).ifPresent(ways::add);
    Choice add = new Choice(bench);
    IntStream.range(rest.phase, rest.base.goal().arc().size())
        .mapToObj(phase -> new Extra(phase, gained / rest.grid * rest.grid))
        .map(room -> Recipe.of(rest.planned(), Recipe.PLANNED, free).with(room))
        .forEach(recipe -> add.add(RestInstance.of(rest, recipe), 0));
    add.way(Way.Kind.ADD).ifPresent(ways::add);
    return ways;
  }
}
