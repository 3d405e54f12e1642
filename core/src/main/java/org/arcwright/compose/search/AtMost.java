package org.arcwright.compose.search;

import java.util.BitSet;
import java.util.Map;
import org.arcwright.compose.instance.Instance;

/**
 * A set of candidates of which an agenda holds only so many.
 *
 * @param members candidate numbers
 * @param most how many
 */
record AtMost(BitSet members, int most) {
  static AtMost of(Instance.AtMost rule, Map<String, Integer> numbers) {
    BitSet members = new BitSet();
    for (String id : rule.of()) {
      Integer number = numbers.get(id);
      if (number != null) {
        members.set(number);
      }
    }
    return new AtMost(members, rule.most());
  }

  /** Whether an agenda of so many exercises could hold one too many. */
  boolean matters(int exercises) {
    return most < Math.min(exercises, members.cardinality());
  }
}
