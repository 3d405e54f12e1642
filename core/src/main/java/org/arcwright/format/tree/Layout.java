package org.arcwright.format.tree;

import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;

/** Which lists and mappings stand on one line. */
final class Layout {
  /** Width of a line. */
  static final int WIDTH = 100;

  private Layout() {}

  /** Whether the node, with its brackets and commas, takes at most so many characters. */
  static boolean fits(Node node, int characters) {
    return left(node, characters) >= 0;
  }

  /** What is left of the characters after the node; negative as soon as it does not fit. */
  private static int left(Node node, int characters) {
    int left = characters - 2;
    if (node instanceof Scalar scalar) {
      return left - scalar.text().length();
    }
    if (node instanceof Sequence sequence) {
      for (int i = 0; i < sequence.nodes().size() && left >= 0; i++) {
        left = left(sequence.nodes().get(i), left);
      }
    }
    if (node instanceof Mapping mapping) {
      for (int i = 0; i < mapping.members().size() && left >= 0; i++) {
        Member entry = mapping.members().get(i);
        left = left(entry.value(), left - entry.key().length() - 2);
      }
    }
    return left;
  }
}
