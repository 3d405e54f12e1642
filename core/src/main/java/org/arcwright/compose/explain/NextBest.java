package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;

/**
 * The cheapest exercise that can stand where one of an agenda stands. Every candidate of a kind
 * that the phase allows is tried in each of its lengths; what comes later moves as much earlier or
 * later, in the same order. That is exact, takes no search, and answers what a facilitator asks
 * about one exercise: what else could I do here, all else as planned? Each attempt counts as a
 * label.
 */
final class NextBest {
  private final Instance instance;
  private final List<Item> items;
  private final Effort effort;
  private final List<Candidate> used;

  /**
   * What was found.
   *
   * @param id the other's; none if no other can stand there
   * @param items with it
   * @param complete whether all were tried
   */
  record Found(Optional<String> id, List<Item> items, boolean complete) {}

  NextBest(Instance instance, List<Item> items, Effort effort) {
    this.instance = instance;
    this.items = items;
    this.effort = effort;
    Set<String> ids = new HashSet<>();
    for (Item item : items) {
      if (item instanceof Activity activity) {
        ids.add(activity.id());
      }
    }
    this.used = instance.candidates().stream().filter(c -> ids.contains(c.id())).toList();
  }

  /** Looks for it in the place of the item of that number, which is an exercise. */
  Found of(int number) {
    Activity out = (Activity) items.get(number);
    Set<String> kinds = instance.phases().get(out.phase()).kinds();
    Optional<String> id = Optional.empty();
    List<Item> best = List.of();
    long cost = Long.MAX_VALUE;
    long tie = Long.MAX_VALUE;
    for (Candidate candidate : instance.candidates()) {
      if (used.contains(candidate) || !kinds.contains(candidate.kind())) {
        continue;
      }
      if (effort.spent()) {
        return new Found(id, best, false);
      }
      Instance small = with(candidate);
      for (int length : candidate.lengths()) {
        List<Item> others =
            swapped(number, new Activity(candidate.id(), out.phase(), out.start(), length));
        Verdict verdict = Checker.check(small, others);
        effort.add(1);
        long total = verdict.cost().total();
        boolean better = total < cost || (total == cost && verdict.tie() < tie);
        if (better && verdict.feasible()) {
          id = Optional.of(candidate.id());
          best = others;
          cost = total;
          tie = verdict.tie();
        }
      }
    }
    return new Found(id, best, true);
  }

  /** A problem small enough to be looked at thousands of times. */
  private Instance with(Candidate candidate) {
    List<Candidate> few = new ArrayList<>(used);
    few.add(candidate);
    return instance.withCandidates(few);
  }

  private List<Item> swapped(int number, Activity in) {
    int later = in.length() - items.get(number).length();
    List<Item> others = new ArrayList<>(items.subList(0, number));
    others.add(in);
    for (Item item : items.subList(number + 1, items.size())) {
      others.add(
          item instanceof Activity a
              ? new Activity(a.id(), a.phase(), a.start() + later, a.length())
              : new Item.Pause(item.start() + later, item.length()));
    }
    return others;
  }
}
