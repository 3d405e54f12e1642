package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.brief.Brief;
import org.arcwright.compose.explain.Feasibility.Status;

/** Tries what becomes of a brief when wishes in it are changed or given up. */
final class Trial {
  private final Brief brief;
  private final Steps steps;
  private final Feasibility feasibility;

  Trial(Brief brief, Steps steps, Feasibility feasibility) {
    this.brief = brief;
    this.steps = steps;
    this.feasibility = feasibility;
  }

  /** The brief with these wishes changed. */
  Case with(Map<Wish, Optional<Wish>> changes) {
    Draft draft = Draft.of(brief);
    changes.forEach(draft::change);
    return draft.draft();
  }

  /** Whether an agenda can be made with some wishes changed, and others given up altogether. */
  Status fits(Map<Wish, Optional<Wish>> changes, Collection<Wish> givenUp) {
    boolean timeToo = givenUp.stream().anyMatch(Wish.Cap.class::isInstance);
    Status status = Status.FITS_NOT;
    for (Map<Wish, Optional<Wish>> all : changes(changes, givenUp)) {
      Status now = timeToo ? inAnyTime(with(all)) : feasibility.of(with(all)).status();
      if (now == Status.FITS) {
        return now;
      }
      status = now == Status.UNKNOWN ? now : status;
    }
    return status;
  }

  /** All that there is to try, the cap left as it is. */
  private List<Map<Wish, Optional<Wish>>> changes(
      Map<Wish, Optional<Wish>> changes, Collection<Wish> givenUp) {
    List<Map<Wish, Optional<Wish>>> all = List.of(changes);
    for (Wish wish : givenUp) {
      if (!(wish instanceof Wish.Cap)) {
        List<Map<Wish, Optional<Wish>>> more = new ArrayList<>();
        for (Map<Wish, Optional<Wish>> before : all) {
          for (Optional<Wish> instead : steps.givenUp(wish)) {
            Map<Wish, Optional<Wish>> after = new HashMap<>(before);
            after.put(wish, instead);
            more.add(after);
          }
        }
        all = more;
      }
    }
    return all;
  }

  /** The first step of a way that is enough, all else as the changes say. */
  FirstFit.Found least(
      Wish wish, List<Wish> way, Map<Wish, Optional<Wish>> changes, Collection<Wish> givenUp) {
    if (wish instanceof Wish.Cap && givenUp.isEmpty()) {
      Case changed = with(changes);
      return FirstFit.of(
          shortestToThinkOf(changed, way), way.size(), i -> inTime(changed, way.get(i)));
    }
    Map<Wish, Optional<Wish>> tried = new HashMap<>(changes);
    return FirstFit.of(
        0,
        way.size(),
        i -> {
          tried.put(wish, Optional.of(way.get(i)));
          return fits(tried, givenUp);
        });
  }

  private Status inAnyTime(Case changed) {
    Status now = feasibility.of(changed).status();
    if (now == Status.FITS) {
      return now;
    }
    List<Wish> longer = steps.of(new Wish.Cap(brief.cap())).get(0);
    Status later =
        FirstFit.any(
            shortestToThinkOf(changed, longer), longer.size(), i -> inTime(changed, longer.get(i)));
    return later == Status.FITS_NOT ? now : later;
  }

  private int shortestToThinkOf(Case changed, List<Wish> longer) {
    return FirstFit.whereMoreIsNeverLess(
        longer.size(), i -> feasibility.withoutShares(in(changed, longer.get(i))));
  }

  private Status inTime(Case changed, Wish cap) {
    return feasibility.of(in(changed, cap)).status();
  }

  private static Case in(Case changed, Wish cap) {
    Wish before = new Wish.Cap(changed.brief().cap());
    return Draft.of(changed).change(before, Optional.of(cap)).draft();
  }
}
