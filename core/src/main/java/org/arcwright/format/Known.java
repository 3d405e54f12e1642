package org.arcwright.format;

import java.util.Collection;
import org.arcwright.catalog.Nearest;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;

/** Holds words of a file against the words that are known. */
final class Known {
  /** So many can be listed in a message. */
  private static final int FEW = 6;

  private Known() {}

  /** An unknown word, or each unknown word of a list, is a fault. */
  static void check(Node words, String what, Collection<String> known, Faults faults) {
    if (words instanceof Sequence sequence) {
      for (Node word : sequence.nodes()) {
        check(word, what, known, faults);
      }
    } else if (words instanceof Scalar word && !known.contains(word.text())) {
      faults.add(
          word,
          "unknown " + what,
          Nearest.to(word.text(), known)
              .map(near -> "perhaps " + near)
              .orElseGet(() -> remedy(known)));
    }
  }

  private static String remedy(Collection<String> known) {
    return known.isEmpty() || known.size() > FEW
        ? "the catalog has none of that name"
        : "known here: " + String.join(", ", known);
  }
}
