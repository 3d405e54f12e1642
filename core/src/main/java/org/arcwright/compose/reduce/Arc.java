package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;

/**
 * The goal's arc in minutes: each phase has its share of the working time, rounded outward to the
 * grid, and room for the sponsor's own items on top.
 */
final class Arc {
  private final List<Phase> arc;
  private final Timing timing;
  private final Supply supply;
  private final int working;
  private final List<Set<String>> kinds = new ArrayList<>();
  private final List<Integer> needed = new ArrayList<>();

  /**
   * @param arc the goal's phases
   * @param placement which kinds each phase takes
   * @param given products that exist before the start
   * @param timing the brief's times
   * @param supply what the candidates can fill
   * @param working exercise minutes to share out, own items not among them
   */
  Arc(
      List<Phase> arc,
      Placement placement,
      Set<String> given,
      Timing timing,
      Supply supply,
      int working) {
    this.arc = arc;
    this.timing = timing;
    this.supply = supply;
    this.working = working;
    Set<String> existing = new HashSet<>(given);
    for (int i = 0; i < arc.size(); i++) {
      Phase phase = arc.get(i);
      Set<String> words = placement.kinds(i);
      kinds.add(words);
      List<String> due = phase.yields().stream().filter(existing::add).toList();
      needed.add(supply.needed(words, phase.fewest(), due));
    }
  }

  /** The phases as an instance has them. */
  List<Instance.Phase> phases(OwnItems own) {
    boolean tight = leastInAll() > working;
    List<Instance.Phase> phases = new ArrayList<>();
    for (int i = 0; i < arc.size(); i++) {
      Phase phase = arc.get(i);
      int least = tight ? Math.min(least(i), needed.get(i)) : least(i);
      OwnItems.Room room = own.room(i, shareEnds());
      Set<String> allowed = new LinkedHashSet<>(kinds.get(i));
      allowed.addAll(room.kinds());
      phases.add(
          new Instance.Phase(
              phase.name(),
              allowed,
              new Bounds(phase.fewest() + room.certain(), phase.most() + room.kinds().size()),
              new Bounds(least + room.certainMinutes(), most(i) + room.minutes()),
              target(i) + room.expectedMinutes(),
              List.copyOf(phase.yields())));
    }
    return phases;
  }

  /** If the least of each phase is too much together, shares give way to the shortest exercises. */
  private int leastInAll() {
    int sum = 0;
    for (int i = 0; i < arc.size(); i++) {
      sum += Math.max(least(i), needed.get(i));
    }
    return sum;
  }

  /** Its least share, but never more than its exercises can fill. */
  private int least(int i) {
    int grid = timing.grid();
    int share = working * arc.get(i).share().min() / 100 / grid * grid;
    return Math.min(share, supply.longest(kinds.get(i), arc.get(i).most()));
  }

  /** Its largest share, but never less than its shortest exercises need. */
  private int most(int i) {
    int cell = 100 * timing.grid();
    int share = (working * arc.get(i).share().max() + cell - 1) / cell * timing.grid();
    return Math.max(share, needed.get(i));
  }

  private int target(int i) {
    return (working * arc.get(i).share().target() + 50) / 100;
  }

  /** Where each phase should end, in minutes of the cap. */
  private List<Integer> shareEnds() {
    int shares = Math.max(1, arc.stream().mapToInt(phase -> phase.share().target()).sum());
    List<Integer> ends = new ArrayList<>();
    int sum = 0;
    for (Phase phase : arc) {
      sum += phase.share().target();
      ends.add(timing.cap() * sum / shares);
    }
    return ends;
  }
}
