package org.arcwright.standin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.standin.Chain.Link;
import org.arcwright.standin.Chain.Room;

/**
 * Finds the best stand-ins for several exercises together: as many as can be, and among these the
 * cheapest. A product that an exercise leaves is counted on only if its stand-in leaves it, too, so
 * that it does not matter which of them are used in the end. Branch and bound from the first
 * exercise to the last, exponential in the worst case; what makes it short is that stand-ins rarely
 * get in each other's way, and then the first descent is the best.
 */
final class Assignment {
  /** Dearer than any exercise: first as many as can be have a stand-in. */
  private static final long NONE = 1_000_000_000L;

  private static final Comparator<Option> BEST_FIRST =
      Comparator.comparingLong(Option::price)
          .thenComparingInt(option -> Math.abs(option.more()))
          .thenComparing(option -> option.exercise().id());

  private final Chain chain;
  private final Map<Integer, List<Option>> options;
  private final long[] atLeast;
  private final int[] filled;
  private final Map<Integer, Option> chosen = new HashMap<>();
  private final Set<String> used = new HashSet<>();
  private Map<Integer, Option> best = Map.of();
  private long bestPrice = Long.MAX_VALUE;

  private Assignment(Chain chain, Map<Integer, List<Option>> options) {
    this.chain = chain;
    this.options = options;
    this.filled = new int[chain.rooms().size()];
    this.atLeast = new long[chain.links().size() + 1];
    for (int i = chain.links().size() - 1; i >= 0; i--) {
      atLeast[i] = atLeast[i + 1] + least(chain.links().get(i).place());
    }
  }

  private long least(int place) {
    List<Option> here = options.get(place);
    if (here == null) {
      return 0;
    }
    return here.stream().mapToLong(Option::price).min().orElse(NONE);
  }

  /**
   * The best stand-ins by their places; no entry where there is none.
   *
   * @param options for each place at which something fails
   */
  static Map<Integer, Option> best(Chain chain, Map<Integer, List<Option>> options) {
    Map<Integer, List<Option>> sorted = new HashMap<>();
    options.forEach(
        (place, here) -> {
          List<Option> best = new ArrayList<>(here);
          best.sort(BEST_FIRST);
          sorted.put(place, best);
        });
    Assignment assignment = new Assignment(chain, sorted);
    assignment.descend(0, chain.given(), 0);
    return assignment.best;
  }

  private void descend(int number, Set<String> sure, long price) {
    if (price + atLeast[number] >= bestPrice) {
      return;
    }
    if (number == chain.links().size()) {
      best = Map.copyOf(chosen);
      bestPrice = price;
      return;
    }
    Link link = chain.links().get(number);
    if (!sure.containsAll(link.needs())) {
      return;
    }
    List<Option> here = options.get(link.place());
    if (here != null) {
      for (Option option : here) {
        if (sure.containsAll(option.exercise().needs()) && take(link.place(), option)) {
          go(number, with(sure, option.kept()), price + option.price());
          giveBack(link.place(), option);
        }
      }
    }
    go(number, with(sure, link.yields()), here == null ? price : price + NONE);
  }

  private void go(int number, Set<String> sure, long price) {
    if (sure.containsAll(chain.links().get(number).due())) {
      descend(number + 1, sure, price);
    }
  }

  private static Set<String> with(Set<String> products, Set<String> more) {
    if (products.containsAll(more)) {
      return products;
    }
    Set<String> all = new HashSet<>(products);
    all.addAll(more);
    return all;
  }

  private boolean take(int place, Option option) {
    if (!fits(place, option.more()) || !used.add(option.exercise().id())) {
      return false;
    }
    fill(place, Math.max(0, option.more()));
    chosen.put(place, option);
    return true;
  }

  private void giveBack(int place, Option option) {
    used.remove(option.exercise().id());
    fill(place, -Math.max(0, option.more()));
    chosen.remove(place);
  }

  /** One that is longer must find room beside all others that are; one that is shorter may wait. */
  private boolean fits(int place, int more) {
    for (int i = 0; i < filled.length; i++) {
      Room room = chain.rooms().get(i);
      if (more > 0 && room.holds(place) && filled[i] + more > room.minutes()) {
        return false;
      }
    }
    return true;
  }

  private void fill(int place, int more) {
    for (int i = 0; i < filled.length; i++) {
      if (chain.rooms().get(i).holds(place)) {
        filled[i] += more;
      }
    }
  }
}
