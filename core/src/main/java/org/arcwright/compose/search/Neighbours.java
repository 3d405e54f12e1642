package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.compose.instance.Instance.Apart;

/**
 * Who may not follow whom. Candidates alike in all rules share a <em>place</em>, what they are as
 * followers, and a <em>wake</em>, what they bar after them; wake 0 bars nobody. Space is wakes
 * times places in bits, and wakes squared if there are many.
 */
final class Neighbours {
  private final int[] placeOf;
  private final int[] wakeOf;

  /** For each wake the places that it bars. */
  private final List<BitSet> barred = new ArrayList<>();

  /** For each wake what is left of it after a break. */
  private final int[] afterBreak;

  private Neighbours(List<Apart> rules, Map<String, Integer> numbers, int candidates) {
    BitSet[] first = new BitSet[candidates];
    BitSet[] then = new BitSet[candidates];
    BitSet lasting = new BitSet();
    for (int r = 0; r < rules.size(); r++) {
      mark(first, rules.get(r).first(), numbers, r);
      mark(then, rules.get(r).then(), numbers, r);
      lasting.set(r, rules.get(r).acrossBreaks());
    }
    Map<BitSet, Integer> places = new HashMap<>();
    Map<BitSet, Integer> wakes = new HashMap<>();
    List<BitSet> rulesOf = new ArrayList<>();
    placeOf = numbered(then, places, new ArrayList<>());
    wakeOf = numbered(first, wakes, rulesOf);
    List<Integer> rested = new ArrayList<>();
    for (int wake = 0; wake < rulesOf.size(); wake++) {
      BitSet left = (BitSet) rulesOf.get(wake).clone();
      left.and(lasting);
      rested.add(number(left, wakes, rulesOf));
    }
    for (BitSet wake : rulesOf) {
      BitSet bars = new BitSet();
      places.forEach((place, number) -> bars.set(number, place.intersects(wake)));
      barred.add(bars);
    }
    afterBreak = rested.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * Compiles rules, in time linear in the ids that they name.
   *
   * @param numbers of candidates, by id; of all that the rules name
   * @param candidates how many there are
   */
  static Neighbours of(List<Apart> rules, Map<String, Integer> numbers, int candidates) {
    return new Neighbours(rules, numbers, candidates);
  }

  private static void mark(
      BitSet[] marks, Iterable<String> ids, Map<String, Integer> numbers, int rule) {
    for (String id : ids) {
      Integer number = numbers.get(id);
      if (number != null) {
        if (marks[number] == null) {
          marks[number] = new BitSet();
        }
        marks[number].set(rule);
      }
    }
  }

  private static int[] numbered(BitSet[] marks, Map<BitSet, Integer> numbers, List<BitSet> all) {
    number(new BitSet(), numbers, all);
    int[] numbered = new int[marks.length];
    for (int i = 0; i < marks.length; i++) {
      numbered[i] = marks[i] == null ? 0 : number(marks[i], numbers, all);
    }
    return numbered;
  }

  private static int number(BitSet marks, Map<BitSet, Integer> numbers, List<BitSet> all) {
    Integer known = numbers.putIfAbsent(marks, all.size());
    if (known == null) {
      all.add(marks);
      return all.size() - 1;
    }
    return known;
  }

  int place(int candidate) {
    return placeOf[candidate];
  }

  int wake(int candidate) {
    return wakeOf[candidate];
  }

  int afterBreak(int wake) {
    return afterBreak[wake];
  }

  /** Whether an exercise of that place may be the next one. */
  boolean mayFollow(int wake, int place) {
    return !barred.get(wake).get(place);
  }

  /** Whether all that may follow the other wake may follow this one, with a break and without. */
  boolean within(int wake, int other) {
    return wake == other
        || wake == 0
        || (covers(other, wake) && covers(afterBreak[other], afterBreak[wake]));
  }

  private boolean covers(int larger, int smaller) {
    BitSet few = barred.get(smaller);
    BitSet many = barred.get(larger);
    int bit = few.nextSetBit(0);
    while (bit >= 0 && many.get(bit)) {
      bit = few.nextSetBit(bit + 1);
    }
    return bit < 0;
  }
}
