package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * How many exercises of earlier agendas may come again, and how many of those that a rule counts
 * may come at all. A label counts each of them in the bits of one long: a field for each agenda and
 * then for each rule, which starts as far from full as may come, and above it a guard bit, which
 * one too many sets. All fields are compared or raised at once (Lamport 1975).
 */
final class Sharing {
  private final int agendas;
  private final int width;
  private final long guards;
  private final long start;

  /** The lowest bit of each agenda's field. */
  private final long again;

  /**
   * For each candidate, a one in the field of each agenda that holds it and rule that counts it.
   */
  private final long[] uses;

  /** For each phase, counts up to which the rest of the arc cannot bring one too many. */
  private final long[] floors;

  private Sharing(int agendas, int width, long guards, long start, long[] uses, long[] floors) {
    this.agendas = agendas;
    this.width = width;
    this.guards = guards;
    this.start = start;
    this.again = lowest(agendas, width);
    this.uses = uses;
    this.floors = floors;
  }

  /** Without earlier agendas. */
  static Sharing none(Model model) {
    return of(model, List.of(), List.of());
  }

  private static long lowest(int fields, int width) {
    long bits = 0;
    for (int i = 0; i < fields; i++) {
      bits |= 1L << (i * (width + 1));
    }
    return bits;
  }

  /**
   * With earlier agendas; see {@link #fits}.
   *
   * @param earlier the candidates of each
   * @param most how many of each may come again
   */
  static Sharing of(Model model, List<BitSet> earlier, List<Integer> most) {
    List<AtMost> all = new ArrayList<>();
    for (int i = 0; i < earlier.size(); i++) {
      all.add(new AtMost(earlier.get(i), most.get(i)));
    }
    all.addAll(model.atMost);
    int width = width(model, most);
    long full = (1L << width) - 1;
    long guards = 0;
    long start = 0;
    long[] uses = new long[model.ids.length];
    long[] floors = new long[model.stages.length];
    for (int i = 0; i < all.size(); i++) {
      int low = i * (width + 1);
      BitSet members = all.get(i).members();
      guards |= 1L << (low + width);
      start |= (full - all.get(i).most()) << low;
      members.stream().forEach(candidate -> uses[candidate] |= 1L << low);
      for (int p = 0; p < floors.length; p++) {
        floors[p] |= Math.max(0, full - usable(model, p, members)) << low;
      }
    }
    return new Sharing(most.size(), width, guards, start, uses, floors);
  }

  /** Whether the counts of so many have room side by side, beside those of the rules. */
  static boolean fits(Model model, List<Integer> most) {
    return (most.size() + model.atMost.size()) * (width(model, most) + 1) <= Long.SIZE;
  }

  private static int width(Model model, List<Integer> most) {
    int largest = most.stream().mapToInt(Integer::intValue).max().orElse(0);
    largest = Math.max(largest, model.atMost.stream().mapToInt(AtMost::most).max().orElse(0));
    return Integer.SIZE - Integer.numberOfLeadingZeros(largest);
  }

  /** How many of some candidates may stand in a phase or after it. */
  private static int usable(Model model, int phase, BitSet members) {
    BitSet usable = new BitSet();
    for (int p = phase; p < model.stages.length; p++) {
      for (Peers[] move : model.stages[p].movePeers) {
        for (Peers peers : move) {
          Arrays.stream(peers.members).filter(members::get).forEach(usable::set);
        }
      }
    }
    return usable.cardinality();
  }

  /** The same agendas without limits and counts. */
  Sharing unlimited() {
    return new Sharing(agendas, 0, 0, 0, uses, new long[floors.length]);
  }

  /** How many earlier agendas there are. */
  int agendas() {
    return agendas;
  }

  /** Whether any earlier agenda holds a candidate. */
  boolean counts(int candidate) {
    return (uses[candidate] & again) != 0;
  }

  /** Whether an earlier agenda holds a candidate. */
  boolean holds(int agenda, int candidate) {
    return ((uses[candidate] >>> (agenda * (width + 1))) & 1) != 0;
  }

  /** The counts before the first exercise. */
  long start() {
    return start;
  }

  /** The counts after one more exercise. */
  long after(long counts, int candidate) {
    return counts + uses[candidate];
  }

  /** Whether there is one too many. */
  boolean over(long counts) {
    return (counts & guards) != 0;
  }

  /** The counts in a phase, each raised as far as makes no difference any more. */
  long settled(long counts, int phase) {
    long floor = floors[phase];
    long atLeast = ((counts | guards) - floor) & guards;
    long keep = atLeast - (atLeast >>> width);
    return (counts & keep) | (floor & ~keep);
  }

  /** Whether no count is over its counterpart. */
  boolean within(long counts, long others) {
    return (((others | guards) - counts) & guards) == guards;
  }

  /** How many exercises of an earlier agenda may still come again. */
  int left(long counts, int agenda) {
    long full = (1L << width) - 1;
    return (int) (full - ((counts >>> (agenda * (width + 1))) & full));
  }
}
