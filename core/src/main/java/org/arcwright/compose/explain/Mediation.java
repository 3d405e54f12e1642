package org.arcwright.compose.explain;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.explain.Clash.Asked;
import org.arcwright.compose.explain.Clash.Conflict;
import org.arcwright.compose.explain.LeastChange.Change;

/** Puts together what clashes in one brief, and what would end it. */
final class Mediation {
  /** More ways out nobody reads; those that give up most are dropped. */
  private static final int MOST_WAYS = 12;

  /** So much of the effort, in per cent, goes into finding them, the rest into their agendas. */
  private static final int FINDING = 70;

  private final Catalog catalog;
  private final InstantSource clock;
  private final Effort effort;
  private final Feasibility feasibility;
  private final Trial trial;
  private final LeastChange leastChange;
  private final Sayings sayings;
  private final WaysOut ways;

  Mediation(Brief brief, Catalog catalog, int grid, Effort effort, InstantSource clock) {
    this.catalog = catalog;
    this.clock = clock;
    this.effort = effort;
    Effort finding = effort.percent(FINDING);
    Steps steps = new Steps(brief, catalog, grid);
    this.feasibility = new Feasibility(catalog, finding);
    this.trial = new Trial(brief, steps, feasibility);
    this.leastChange = new LeastChange(steps, trial, new Sacrifice(brief));
    this.sayings = new Sayings(brief, catalog);
    this.ways = new WaysOut(Wishlist.of(brief, catalog, steps), trial, finding);
  }

  Clash clash() {
    ways.find();
    List<Change> changes = new ArrayList<>();
    ways.sets().forEach(set -> changes.addAll(leastChange.of(set)));
    changes.sort(Comparator.comparingInt(leastChange::givesUp));
    List<WayOut> out = new ArrayList<>();
    int most = Math.min(MOST_WAYS, changes.size());
    for (int i = 0; i < most; i++) {
      wayOut(changes.get(i), most - i).ifPresent(out::add);
    }
    return new Clash(apart(), out, ways.complete() && out.size() == most);
  }

  /** The first conflict, and those that have no wish in common with one before. */
  private List<Conflict> apart() {
    List<Conflict> apart = new ArrayList<>();
    Set<Wish> seen = new HashSet<>();
    for (WaysOut.Found found : ways.conflicts()) {
      if (found.wishes().stream().noneMatch(seen::contains)) {
        seen.addAll(found.wishes());
        apart.add(
            new Conflict(
                found.wishes().stream().map(w -> new Asked(w, sayings.asked(w))).toList(),
                found.smallest()));
      }
    }
    return apart;
  }

  /** The change with the agenda that follows, the best one if one of so many parts is enough. */
  private Optional<WayOut> wayOut(Change change, int parts) {
    Case changed = trial.with(change.instead());
    Brief brief = changed.brief();
    Composition answer =
        Composer.of(changed.in(catalog), clock).compose(brief, effort.part(parts), effort.cancel());
    if (answer instanceof Composed composed) {
      effort.add(composed.proof().labels());
      return Optional.of(
          new WayOut(
              loosenings(change),
              change.least(),
              leastChange.givesUp(change),
              brief,
              composed.agenda(),
              composed.proof().best()));
    }
    return feasibility
        .agenda(changed)
        .map(
            agenda ->
                new WayOut(
                    loosenings(change),
                    change.least(),
                    leastChange.givesUp(change),
                    brief,
                    agenda,
                    false));
  }

  private List<Loosening> loosenings(Change change) {
    List<Loosening> loosenings = new ArrayList<>();
    for (Map.Entry<Wish, Optional<Wish>> part : change.instead().entrySet()) {
      String text = sayings.givenUp(part.getKey(), part.getValue());
      loosenings.add(new Loosening(part.getKey(), part.getValue(), text));
    }
    return loosenings;
  }
}
