package org.arcwright.compose.explain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.compose.explain.Feasibility.Status;

/**
 * Which wishes clash, and which of them to give up. Whatever is given up must take a wish out of
 * every conflict, so that conflicts and ways out are found together, the smallest first, as the
 * nodes of a tree in which each node adds a wish out of a conflict that is still there (Reiter
 * 1987, "A theory of diagnosis from first principles").
 */
final class WaysOut {
  /** Where more changes at once are needed, one way is found, not all of them. */
  private static final int MOST_AT_ONCE = 2;

  private final Wishlist list;
  private final Trial trial;
  private final Effort effort;
  private final List<Set<Wish>> sets = new ArrayList<>();
  private final List<Found> conflicts = new ArrayList<>();
  private boolean complete = true;

  /** A conflict, and whether it is proven that none of its wishes can be spared. */
  record Found(List<Wish> wishes, boolean smallest) {}

  WaysOut(Wishlist list, Trial trial, Effort effort) {
    this.list = list;
    this.trial = trial;
    this.effort = effort;
  }

  /** Conflicts of the brief, the first found first. */
  List<Found> conflicts() {
    return conflicts;
  }

  /** Smallest sets of wishes that let an agenda be made once they are given up. */
  List<Set<Wish>> sets() {
    return sets;
  }

  /** Whether all of them were looked for. */
  boolean complete() {
    return complete;
  }

  void find() {
    Deque<Set<Wish>> open = new ArrayDeque<>();
    Set<Set<Wish>> seen = new HashSet<>();
    open.add(Set.of());
    while (!open.isEmpty()) {
      Set<Wish> givenUp = open.poll();
      if (!sets.isEmpty() && givenUp.size() > sets.get(0).size()) {
        return;
      }
      if (effort.spent()) {
        complete = false;
        return;
      }
      if (!sets.isEmpty() && givenUp.stream().anyMatch(Wish.People.class::isInstance)) {
        continue;
      }
      Status status = givenUp.isEmpty() ? Status.FITS_NOT : trial.fits(Map.of(), givenUp);
      if (status == Status.FITS) {
        sets.add(givenUp);
      } else if (status == Status.UNKNOWN) {
        complete = false;
      } else if (givenUp.size() < MOST_AT_ONCE) {
        for (Wish wish : conflict(givenUp).wishes()) {
          Set<Wish> more = new LinkedHashSet<>(givenUp);
          more.add(wish);
          if (seen.add(more)) {
            open.add(more);
          }
        }
        if (givenUp.isEmpty()) {
          list.facts().stream().map(Set::of).filter(seen::add).forEach(open::add);
        }
      }
    }
    if (sets.isEmpty() && !conflicts.get(0).wishes().isEmpty()) {
      grow();
    }
  }

  /**
   * Gives up all, and then takes back one wish after the other as long as an agenda can be made;
   * what is left cannot be spared.
   */
  private void grow() {
    List<Wish> back = new ArrayList<>(joined(list.facts(), list.wishes()));
    back.sort(Comparator.comparing(Wish.Cap.class::isInstance));
    Set<Wish> givenUp = new LinkedHashSet<>(back);
    if (trial.fits(Map.of(), givenUp) != Status.FITS) {
      return;
    }
    for (Wish wish : back) {
      givenUp.remove(wish);
      if (trial.fits(Map.of(), givenUp) != Status.FITS) {
        givenUp.add(wish);
      }
    }
    complete &= !effort.spent();
    sets.add(givenUp);
  }

  /** A conflict among the wishes that are not given up. */
  private Found conflict(Set<Wish> givenUp) {
    for (Found known : conflicts) {
      if (known.wishes().stream().noneMatch(givenUp::contains)) {
        return known;
      }
    }
    List<Wish> wishes = without(list.wishes(), givenUp);
    List<Wish> facts = without(list.facts(), givenUp);
    boolean amongFacts = clash(facts);
    List<Wish> conflict =
        amongFacts
            ? QuickXplain.conflict(facts, this::clash)
            : QuickXplain.conflict(wishes, kept -> clash(joined(kept, facts)));
    Found found = spared(conflict, amongFacts ? List.of() : facts);
    conflicts.add(found);
    return found;
  }

  /** Leaves out what is not needed for the clash after all. */
  private Found spared(List<Wish> conflict, List<Wish> background) {
    List<Wish> wishes = new ArrayList<>(conflict);
    boolean smallest = true;
    for (int i = 0; i < wishes.size(); ) {
      Wish wish = wishes.remove(i);
      Status without = kept(joined(wishes, background));
      if (without == Status.FITS_NOT) {
        i = 0;
        smallest = true;
      } else {
        wishes.add(i++, wish);
        smallest &= without == Status.FITS;
      }
    }
    return new Found(wishes, smallest);
  }

  private boolean clash(List<Wish> kept) {
    return kept(kept) == Status.FITS_NOT;
  }

  /** Whether an agenda can be made if only these wishes are kept. */
  private Status kept(List<Wish> kept) {
    return trial.fits(Map.of(), without(joined(list.wishes(), list.facts()), kept));
  }

  private static List<Wish> without(List<Wish> wishes, Collection<Wish> others) {
    return wishes.stream().filter(wish -> !others.contains(wish)).toList();
  }

  private static List<Wish> joined(List<Wish> one, List<Wish> other) {
    List<Wish> joined = new ArrayList<>(one);
    joined.addAll(other);
    return joined;
  }
}
