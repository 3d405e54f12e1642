package org.arcwright.format.tree;

import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;
import tools.jackson.core.io.JsonStringEncoder;

/**
 * Writes a tree as JSON: what fits on a line stands on one, so that a list of a hundred thousand
 * small entries can be read and compared line by line.
 */
public final class JsonWriter {
  private static final int WIDEST_ENTRY = 240;

  private final StringBuilder out = new StringBuilder();
  private final boolean dense;

  private JsonWriter(boolean dense) {
    this.dense = dense;
  }

  /** For people to read; ends with a line break. */
  public static String write(Node root) {
    JsonWriter writer = new JsonWriter(false);
    writer.node(root, 0);
    return writer.out.append('\n').toString();
  }

  /** Without white space. */
  public static String writeDense(Node root) {
    JsonWriter writer = new JsonWriter(true);
    writer.node(root, 0);
    return writer.out.toString();
  }

  private void node(Node node, int depth) {
    if (node instanceof Scalar scalar) {
      scalar(scalar);
      return;
    }
    boolean open = !dense && (depth == 0 || !Layout.fits(node, WIDEST_ENTRY));
    if (node instanceof Sequence sequence) {
      out.append('[');
      for (int i = 0; i < sequence.nodes().size(); i++) {
        separate(i, open, depth);
        node(sequence.nodes().get(i), depth + 1);
      }
      close(']', open && !sequence.nodes().isEmpty(), depth);
    } else if (node instanceof Mapping mapping) {
      out.append('{');
      for (int i = 0; i < mapping.members().size(); i++) {
        separate(i, open, depth);
        Member entry = mapping.members().get(i);
        text(entry.key());
        out.append(dense ? ":" : ": ");
        node(entry.value(), depth + 1);
      }
      close('}', open && !mapping.members().isEmpty(), depth);
    }
  }

  private void separate(int index, boolean open, int depth) {
    if (index > 0) {
      out.append(open || dense ? "," : ", ");
    }
    if (open) {
      out.append('\n').append("  ".repeat(depth + 1));
    }
  }

  private void close(char bracket, boolean open, int depth) {
    if (open) {
      out.append('\n').append("  ".repeat(depth));
    }
    out.append(bracket);
  }

  private void scalar(Scalar scalar) {
    if (scalar.type() == ScalarType.TEXT) {
      text(scalar.text());
    } else {
      out.append(scalar.type() == ScalarType.NOTHING ? "null" : scalar.text());
    }
  }

  private void text(String text) {
    out.append('"');
    JsonStringEncoder.getInstance().quoteAsString(text, out);
    out.append('"');
  }
}
