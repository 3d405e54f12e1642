package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.explain.Feasibility.Status;

/** The least that has to be given up about some wishes, so that an agenda can be made. */
final class LeastChange {
  private final Steps steps;
  private final Trial trial;
  private final Sacrifice sacrifice;

  /**
   * What to change, and whether it is proven that less is not enough.
   *
   * @param instead for each wish what to put in its place
   */
  record Change(Map<Wish, Optional<Wish>> instead, boolean least) {
    private static final Change NONE = new Change(Map.of(), true);

    private Change with(Wish wish, Optional<Wish> other, boolean sure) {
      Map<Wish, Optional<Wish>> all = new LinkedHashMap<>(instead);
      all.put(wish, other);
      return new Change(all, least && sure);
    }

    private Change without(Wish wish) {
      Map<Wish, Optional<Wish>> others = new LinkedHashMap<>(instead);
      others.remove(wish);
      return new Change(others, least);
    }
  }

  LeastChange(Steps steps, Trial trial, Sacrifice sacrifice) {
    this.steps = steps;
    this.trial = trial;
    this.sacrifice = sacrifice;
  }

  /** How much a change gives up; see {@link Sacrifice}. */
  int givesUp(Change change) {
    return change.instead().entrySet().stream()
        .mapToInt(entry -> sacrifice.of(entry.getKey(), entry.getValue()))
        .sum();
  }

  /**
   * For one wish, the least in each way to give something up about it. For several that have to be
   * given up together, one change of which no part could be smaller.
   */
  List<Change> of(Set<Wish> wishes) {
    List<Wish> order = new ArrayList<>(wishes);
    order.sort(Comparator.comparing(wish -> !(wish instanceof Wish.Cap)));
    if (order.size() == 1) {
      return of(order.get(0), Change.NONE, List.of());
    }
    Change change = Change.NONE;
    for (int i = 0; i < order.size(); i++) {
      Optional<Change> more = smallest(order.get(i), change, order.subList(i + 1, order.size()));
      if (more.isEmpty()) {
        return List.of();
      }
      change = more.get();
    }
    return List.of(settled(change));
  }

  /**
   * Goes over all parts again, as long as one of them can be smaller or spared beside what the
   * others have become: less of one wish may come with less of another.
   */
  private Change settled(Change change) {
    for (Wish wish : change.instead().keySet()) {
      Change others = change.without(wish);
      if (!others.instead().isEmpty() && trial.fits(others.instead(), List.of()) == Status.FITS) {
        return settled(others);
      }
      Optional<Change> smaller =
          smallest(wish, others, List.of()).filter(less -> givesUp(less) < givesUp(change));
      if (smaller.isPresent()) {
        return settled(smaller.get());
      }
    }
    return change;
  }

  private Optional<Change> smallest(Wish wish, Change before, Collection<Wish> givenUp) {
    return of(wish, before, givenUp).stream().min(Comparator.comparingInt(this::givesUp));
  }

  /** What can be changed about a wish, beside what is changed already and what is given up. */
  private List<Change> of(Wish wish, Change before, Collection<Wish> givenUp) {
    List<Change> found = new ArrayList<>();
    boolean certain = true;
    for (List<Wish> way : steps.of(wish)) {
      FirstFit.Found least = trial.least(wish, way, before.instead(), givenUp);
      certain &= least.certain();
      if (least.index() >= 0) {
        found.add(before.with(wish, Optional.of(way.get(least.index())), least.certain()));
      }
    }
    if (!found.isEmpty()) {
      return found;
    }
    for (Optional<Wish> instead : steps.givenUp(wish)) {
      Change change = before.with(wish, instead, certain && instead.isEmpty());
      if (trial.fits(change.instead(), givenUp) == Status.FITS) {
        return List.of(spared(wish, instead, before, givenUp).orElse(change));
      }
    }
    return List.of();
  }

  /** Of tools or work products at once, only those that are needed; nothing if it is not those. */
  private Optional<Change> spared(
      Wish wish, Optional<Wish> instead, Change before, Collection<Wish> givenUp) {
    List<String> more = instead.map(all -> Steps.more(wish, all)).orElse(List.of());
    if (more.isEmpty()) {
      return Optional.empty();
    }
    Optional<Wish> now = instead;
    boolean certain = true;
    for (String one : more) {
      Optional<Wish> fewer = now.map(all -> Steps.without(all, one));
      Status status = trial.fits(before.with(wish, fewer, true).instead(), givenUp);
      now = status == Status.FITS ? fewer : now;
      certain &= status != Status.UNKNOWN;
    }
    return Optional.of(before.with(wish, now, certain));
  }
}
