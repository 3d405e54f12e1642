package org.arcwright.compose.search;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.arcwright.compose.instance.Item;
import org.jspecify.annotations.Nullable;

/**
 * Where an agenda stands after an exercise, for {@link Scout}; times in cells.
 *
 * @param time when the exercise ends
 * @param stretch exercise cells since the last break
 * @param phase its phase
 * @param count exercises in the phase so far
 * @param spent cells in the phase so far
 * @param meals meals had
 * @param exercised exercise cells so far
 * @param products that exist
 * @param cost so far; what the phase costs comes when it ends
 * @param candidate the exercise
 * @param length of the exercise
 * @param pause length of the break before it, or 0
 * @param before where the agenda stood before
 */
record Place(
    int time,
    int stretch,
    int phase,
    int count,
    int spent,
    int meals,
    int exercised,
    long products,
    long cost,
    int candidate,
    int length,
    int pause,
    @Nullable Place before) {
  /** Before the first exercise. */
  static final Place START = new Place(0, 0, 0, 0, 0, 0, 0, 0, 0, -1, 0, 0, null);

  /** Whether an exercise has been used. */
  boolean has(int other) {
    for (Place at = this; at != null; at = at.before) {
      if (at.candidate == other) {
        return true;
      }
    }
    return false;
  }

  /** How many of some candidates have been used. */
  int of(BitSet members) {
    int used = 0;
    for (Place at = this; at != null && at.candidate >= 0; at = at.before) {
      used += members.get(at.candidate) ? 1 : 0;
    }
    return used;
  }

  /** The agenda so far, in minutes. */
  List<Item> items(Facts facts) {
    Deque<Item> items = new ArrayDeque<>();
    for (Place at = this; at != null && at.candidate >= 0; at = at.before) {
      int start = at.time - at.length;
      items.addFirst(
          new Item.Activity(
              facts.ids[at.candidate], at.phase, start * facts.grid, at.length * facts.grid));
      if (at.pause > 0) {
        items.addFirst(new Item.Pause((start - at.pause) * facts.grid, at.pause * facts.grid));
      }
    }
    return List.copyOf(items);
  }

  /** The sum of the items' hashes. */
  long tie(Facts facts) {
    long tie = 0;
    for (Place at = this; at != null && at.candidate >= 0; at = at.before) {
      int start = at.time - at.length;
      int prefix = Ties.prefix(facts.ids[at.candidate], at.phase);
      tie += Ties.item(prefix, start * facts.grid, at.length * facts.grid);
      if (at.pause > 0) {
        tie +=
            Ties.item(Ties.breakPrefix(), (start - at.pause) * facts.grid, at.pause * facts.grid);
      }
    }
    return tie;
  }
}
