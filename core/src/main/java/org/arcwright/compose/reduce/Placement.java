package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;

/**
 * In which phases an exercise may stand. A phase takes the kinds that it names; where several
 * phases take the same kind, an exercise stands where it is of use and nowhere else, so that people
 * do not introduce themselves after three hours, settle on a shortlist while they are still
 * sorting, sort what they have voted on, or speak of how the workshop went before it began. In
 * turn:
 *
 * <ol>
 *   <li>where it leaves what the phase must leave;
 *   <li>last before the phase whose exercises need what it leaves, or there;
 *   <li>where it goes on from what the phase must leave;
 *   <li>themes and criteria last before anything is picked, feedback at the close;
 *   <li>else wherever its kind may.
 * </ol>
 *
 * <p>In an instance an exercise that may not stand in all phases of its kind is of a kind of its
 * own, written {@code convergent/sort+pick}.
 */
final class Placement {
  private final List<Phase> arc;
  private final List<Set<String>> kinds = new ArrayList<>();
  private final List<Set<String>> needed = new ArrayList<>();
  private final int firstPick;
  private final Map<String, String> written = new HashMap<>();

  /**
   * @param given what exists before the start; nobody needs to leave it
   * @param allowed the exercises that the brief allows
   */
  Placement(List<Phase> arc, Set<String> given, Collection<Allowed> allowed) {
    this.arc = arc;
    for (Phase phase : arc) {
      Set<String> words = new LinkedHashSet<>();
      phase.kinds().stream().map(Kind::word).forEach(words::add);
      kinds.add(words);
      needed.add(new HashSet<>());
    }
    for (Allowed entry : allowed) {
      for (int i = 0; i < arc.size(); i++) {
        if (takes(i, entry) && anyOf(entry.yields(), arc.get(i).yields())) {
          needed.get(i).addAll(entry.needs());
        }
      }
    }
    needed.forEach(products -> products.removeAll(given));
    needed.forEach(products -> products.removeAll(ExchangeRates.OF_ANY_MATTER));
    firstPick = firstPick();
  }

  private int firstPick() {
    int phase = 0;
    while (phase < arc.size() && !anyOf(arc.get(phase).yields(), ExchangeRates.PICKED)) {
      phase++;
    }
    return phase;
  }

  /** The instance's kind of an exercise. */
  String kind(Allowed allowed) {
    Kind kind = allowed.exercise().kind();
    int takes = 0;
    int leaves = 0;
    for (int i = 0; i < arc.size(); i++) {
      if (takes(i, allowed)) {
        takes |= 1 << i;
        leaves |= anyOf(allowed.yields(), arc.get(i).yields()) ? 1 << i : 0;
      }
    }
    int stands = Integer.bitCount(takes) < 2 || leaves != 0 ? leaves : ofUse(allowed, takes);
    return stands == 0 || stands == takes ? kind.word() : narrowed(kind, stands);
  }

  /** Where an exercise is of use that leaves nothing which one of those phases must leave. */
  private int ofUse(Allowed allowed, int takes) {
    int helps = 0;
    int goesOn = 0;
    for (int i = 0; i < arc.size(); i++) {
      helps |= anyOf(allowed.yields(), needed.get(i)) ? last(takes, i + 1) : 0;
      goesOn |= goesOn(allowed, arc.get(i)) ? takes & 1 << i : 0;
    }
    if (helps != 0) {
      return helps;
    }
    if (goesOn != 0) {
      return goesOn;
    }
    if (anyOf(allowed.yields(), ExchangeRates.BEFORE_PICKING)) {
      return last(takes, firstPick);
    }
    return anyOf(allowed.yields(), ExchangeRates.AT_THE_CLOSE) ? last(takes, arc.size()) : 0;
  }

  /** The last of the phases that stands before that place, or none. */
  private static int last(int phases, int before) {
    return Integer.highestOneBit(phases & (1 << before) - 1);
  }

  private boolean takes(int phase, Allowed allowed) {
    return arc.get(phase).kinds().contains(allowed.exercise().kind());
  }

  private static boolean goesOn(Allowed allowed, Phase phase) {
    for (String product : allowed.needs()) {
      if (phase.yields().contains(product) && ExchangeRates.GOES_ON.contains(product)) {
        return true;
      }
    }
    return false;
  }

  private static boolean anyOf(Collection<String> some, Set<String> products) {
    for (String product : some) {
      if (products.contains(product)) {
        return true;
      }
    }
    return false;
  }

  private String narrowed(Kind kind, int phases) {
    return written.computeIfAbsent(
        kind.word() + phases,
        key -> {
          StringBuilder word = new StringBuilder(kind.word());
          for (int i = 0; i < arc.size(); i++) {
            if ((phases >> i & 1) != 0) {
              word.append(word.indexOf("/") < 0 ? '/' : '+').append(arc.get(i).name());
            }
          }
          for (int i = 0; i < arc.size(); i++) {
            if ((phases >> i & 1) != 0) {
              kinds.get(i).add(word.toString());
            }
          }
          return word.toString();
        });
  }

  /** The instance's kinds that a phase takes, as far as exercises were asked about. */
  Set<String> kinds(int phase) {
    return kinds.get(phase);
  }
}
