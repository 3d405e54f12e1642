package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;

/**
 * Makes a {@link Model} of an instance's {@link Facts}: groups the candidates of each phase that
 * are alike but for their price into {@link Peers}, and chooses the products that the bound
 * follows. Time is linear in the candidates but for sorting peers by price.
 */
final class ModelBuilder {
  /** Most product bits that the bound follows in one phase, if no more are due. */
  static final int AWAITED = 3;

  /** Most product bits that the bound follows in one phase. */
  static final int DUE = 6;

  private final Facts facts;
  private final Work work;

  private ModelBuilder(Facts facts, Work work) {
    this.facts = facts;
    this.work = work;
  }

  /**
   * The model, or nothing if it is plain already that nothing fits.
   *
   * @throws Work.Stopped if the limit is reached
   */
  static Optional<Model> build(Instance instance, Work work) {
    return Facts.of(instance, work).flatMap(facts -> build(facts, work));
  }

  /** The same from what is known already. */
  static Optional<Model> build(Facts facts, Work work) {
    Stage[] stages = new ModelBuilder(facts, work).stages();
    return Arrays.stream(stages).anyMatch(Stage::impossible)
        ? Optional.empty()
        : Optional.of(new Model(facts, stages));
  }

  private Stage[] stages() {
    int phases = facts.phases;
    long[] needed = new long[phases];
    long[] relevant = new long[phases + 1];
    for (int p = phases - 1; p >= 0; p--) {
      needed[p] = needed(p);
      relevant[p] = relevant[p + 1] | facts.due[p] | needed[p];
    }
    Stage[] stages = new Stage[phases];
    for (int p = 0; p < phases; p++) {
      long[] awaited = awaited(p, needed);
      int[] carried =
          p == 0 ? new int[] {0} : carried(stages[p - 1].awaited, awaited, facts.possible[p - 1]);
      stages[p] = stage(p, relevant[p], awaited, carried);
    }
    return stages;
  }

  private Stage stage(int p, long relevant, long[] awaited, int[] carried) {
    Instance.Phase phase = facts.instance.phases().get(p);
    int maxCells = Math.min(phase.minutes().max() / facts.grid, facts.cells);
    Map<Peers.Key, Alike> alike = new HashMap<>();
    int shortest = facts.cells;
    for (int i = 0; i < facts.ids.length; i++) {
      if (facts.usable(i, p)) {
        work.add(1);
        shortest = Math.min(shortest, addLengths(alike, i, relevant, maxCells));
      }
    }
    int most = phase.count().max();
    boolean counted = most < maxCells / Math.max(1, shortest);
    return new Stage(
        p,
        phase.count().min(),
        most,
        counted,
        Math.min(phase.minutes().min() / facts.grid, facts.cells + 1),
        maxCells,
        facts.shareCost[p],
        facts.due[p],
        relevant,
        awaited,
        carried,
        moves(alike.values(), awaited));
  }

  private int addLengths(Map<Peers.Key, Alike> alike, int number, long relevant, int maxCells) {
    Candidate candidate = facts.instance.candidates().get(number);
    Peers.Key key =
        new Peers.Key(
            facts.format[number],
            facts.energy[number],
            facts.needs[number],
            facts.yields[number] & relevant,
            facts.neighbours.place(number),
            facts.neighbours.wake(number),
            facts.counted(number),
            facts.pins.of[number] >= 0 ? number : -1);
    Alike same = alike.computeIfAbsent(key, Alike::new);
    int shortest = facts.cells;
    for (int l = 0; l < candidate.lengths().size(); l++) {
      int length = candidate.lengths().get(l) / facts.grid;
      if (length > maxCells) {
        break;
      }
      int price =
          Facts.whole(
              "candidates[" + number + "].cost",
              candidate.cost(),
              (long) candidate.cost() + candidate.lengthCosts().get(l));
      shortest = Math.min(shortest, length);
      same.add(length, price, number);
    }
    return shortest;
  }

  /** Groups the peers into the moves that the bound tells apart, shortest first. */
  private static Peers[][] moves(Collection<Alike> alike, long[] awaited) {
    List<Peers> all = new ArrayList<>();
    alike.forEach(same -> same.addPeers(all, awaited));
    Peers[] sorted = all.toArray(Peers[]::new);
    Arrays.sort(sorted, ModelBuilder::order);
    List<Peers[]> moves = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || sorted[i].move != sorted[from].move) {
        moves.add(Arrays.copyOfRange(sorted, from, i));
        from = i;
      }
    }
    return moves.toArray(Peers[][]::new);
  }

  /** By moves, and the cheapest of each first. */
  private static int order(Peers a, Peers b) {
    int order = Long.compare(a.move, b.move);
    order = order != 0 ? order : Integer.compare(a.costs[0], b.costs[0]);
    return order != 0 ? order : Integer.compare(a.members[0], b.members[0]);
  }

  /**
   * The products that the bound follows in a phase, of those that may come to exist here: those due
   * at its end or a later one's and those that a wish needs, for somebody must yield them, so that
   * what the bound does not follow of them costs it nothing; then what other exercises need. The
   * soonest come first. What an earlier phase must have left exists for certain.
   */
  private long[] awaited(int p, long[] needed) {
    List<Long> chosen = new ArrayList<>();
    long certain = 0;
    for (int q = 0; q < p; q++) {
      certain |= facts.due[q];
    }
    for (int q = p; q < facts.phases; q++) {
      follow(chosen, facts.due[q] & facts.possible[p] & ~certain, DUE);
    }
    follow(chosen, asked(p) & facts.possible[p] & ~certain, DUE);
    for (int q = p; q < facts.phases; q++) {
      follow(chosen, needed[q] & facts.possible[p] & ~certain, AWAITED);
    }
    return chosen.stream().mapToLong(Long::longValue).toArray();
  }

  /** What wished exercises need that a phase or a later one can use. */
  private long asked(int phase) {
    long asked = 0;
    for (int candidate : facts.wished) {
      for (int p = phase; p < facts.phases; p++) {
        asked |= facts.usable(candidate, p) ? facts.needs[candidate] : 0;
      }
    }
    return asked;
  }

  private static void follow(List<Long> chosen, long products, int most) {
    for (long rest = products; rest != 0 && chosen.size() < most; rest &= rest - 1) {
      long bit = Long.lowestOneBit(rest);
      if (!chosen.contains(bit)) {
        chosen.add(bit);
      }
    }
  }

  private long needed(int phase) {
    long needed = 0;
    for (int i = 0; i < facts.ids.length; i++) {
      if (facts.usable(i, phase)) {
        needed |= facts.needs[i];
      }
    }
    return needed;
  }

  /**
   * For each bound mask at the end of the phase before, the mask at this one's start: what was
   * followed there is carried over, and what was not, but may exist, is taken to exist.
   */
  private static int[] carried(long[] before, long[] awaited, long possibleBefore) {
    int[] carried = new int[1 << before.length];
    long followed = 0;
    for (long bit : before) {
      followed |= bit;
    }
    int free = Stage.gather(possibleBefore & ~followed, awaited);
    for (int mask = 0; mask < carried.length; mask++) {
      long exist = 0;
      for (int i = 0; i < before.length; i++) {
        exist |= (mask >> i & 1) != 0 ? before[i] : 0;
      }
      carried[mask] = free | Stage.gather(exist, awaited);
    }
    return carried;
  }
}
