package org.arcwright.live;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.arcwright.live.Replan.FollowUp;

/**
 * The best that can still be done where the goal is out of reach: as many phases of the arc, in
 * their order, as there is time for, and then the close, for people should not part without one.
 * Where there is no time for one, what runs ends with the day.
 *
 * @param way that; nothing if nothing runs and there is not even time for a close
 * @param followUp what remains
 */
record PartWay(Optional<Way> way, FollowUp followUp) {
  /** What these leave is for those who are there, and cannot be handed over. */
  private static final Set<Kind> SOCIAL = EnumSet.of(Kind.ICEBREAKER, Kind.REFLECTION);

  static PartWay find(Workbench bench) {
    Rest rest = bench.rest();
    for (List<Integer> numbers : inOrder(rest)) {
      for (boolean wishes : new boolean[] {true, false}) {
        Choice choice = new Choice(bench);
        choice.add(RestInstance.anew(rest, numbers, wishes, 0), 0);
        Optional<Way> way = choice.way(Way.Kind.PART);
        if (way.isPresent()) {
          return new PartWay(way, followUp(rest, numbers, way));
        }
      }
    }
    Optional<Way> way = bench.stop();
    return new PartWay(way, followUp(rest, List.of(), way));
  }

  /** The best part, not the whole, whose chance to end in time is no less than that. */
  static Optional<Way> likely(Workbench bench, double least) {
    Rest rest = bench.rest();
    int whole = rest.base.goal().arc().size() - rest.phase;
    for (List<Integer> numbers : inOrder(rest)) {
      if (numbers.size() < whole) {
        Choice choice = new Choice(bench);
        choice.add(RestInstance.anew(rest, numbers, false, 0), 0);
        Optional<Way> way = choice.way(Way.Kind.PART).filter(part -> part.onTime() >= least);
        if (way.isPresent()) {
          return way;
        }
      }
    }
    return Optional.empty();
  }

  /** Phases to go through, the best first: all but one before the close, all but two, and so on. */
  private static List<List<Integer>> inOrder(Rest rest) {
    int last = rest.base.goal().arc().size() - 1;
    List<List<Integer>> inOrder = new ArrayList<>();
    for (int upTo = last - 1; upTo >= rest.phase - 1; upTo--) {
      for (int first = rest.phase; first <= Math.min(rest.phase + 1, upTo + 1); first++) {
        List<Integer> numbers = new ArrayList<>();
        for (int p = first; p <= upTo; p++) {
          numbers.add(p);
        }
        numbers.add(last);
        if (!inOrder.contains(numbers)) {
          inOrder.add(numbers);
        }
      }
    }
    inOrder.add(List.of(rest.phase));
    return inOrder;
  }

  private static FollowUp followUp(Rest rest, List<Integer> reached, Optional<Way> way) {
    List<Phase> arc = rest.base.goal().arc();
    List<String> phases = new ArrayList<>();
    Set<String> lacking = new TreeSet<>();
    Set<String> inHand = new TreeSet<>();
    arc.stream()
        .filter(phase -> !SOCIAL.containsAll(phase.kinds()))
        .forEach(phase -> inHand.addAll(phase.yields()));
    for (int p = rest.phase; p < arc.size(); p++) {
      lacking.addAll(arc.get(p).yields());
      if (!reached.contains(p) && p > rest.phase) {
        phases.add(arc.get(p).title());
      }
    }
    lacking.removeAll(rest.products);
    Set<String> held = new HashSet<>();
    way.ifPresent(w -> w.agenda().activities().forEach(each -> held.add(each.exercise())));
    held.forEach(id -> lacking.removeAll(rest.yieldsOf(id)));
    inHand.removeAll(lacking);
    List<String> undone =
        rest.planned().stream()
            .filter(each -> !held.contains(each.exercise()))
            .map(Activity::title)
            .toList();
    return new FollowUp(phases, List.copyOf(lacking), List.copyOf(inHand), undone);
  }
}
