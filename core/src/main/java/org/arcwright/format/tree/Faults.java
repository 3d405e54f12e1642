package org.arcwright.format.tree;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Sequence;

/** Collects what is wrong in one file, in the order of finding. Not thread-safe. */
public final class Faults {
  /** What is wrong when a mapping lacks a key. */
  static final String MISSING = "missing key";

  /** Beyond so many nobody reads on. */
  private static final int MOST = 200;

  private final List<Fault> found = new ArrayList<>();
  private int count;

  /** Adds one at a node. */
  public void add(Node node, String what, String value, String remedy) {
    add(node.line(), node.column(), what, value, remedy);
  }

  /** Adds one about a node's value. */
  public void add(Node node, String what, String remedy) {
    add(node, what, node.shown(), remedy);
  }

  /** Adds one at a place. */
  public void add(int line, int column, String what, String value, String remedy) {
    count++;
    if (count <= MOST) {
      found.add(new Fault(line, column, what, value, remedy));
    }
  }

  /** Whether the key was found missing in the mapping. */
  public boolean isMissing(Node mapping, String key) {
    return found.stream()
        .anyMatch(
            fault ->
                fault.line() == mapping.line()
                    && fault.column() == mapping.column()
                    && fault.what().equals(MISSING)
                    && fault.value().equals(key));
  }

  /** Whether there is one at the entry's key; a mapping that lacks a key starts there, too. */
  boolean isAt(Member entry) {
    return found.stream()
        .anyMatch(
            fault ->
                fault.line() == entry.line()
                    && fault.column() == entry.column()
                    && !fault.what().equals(MISSING));
  }

  /** Whether there is one at the node or within it. */
  public boolean isWithin(Node node) {
    if (isAt(node.line(), node.column())) {
      return true;
    }
    if (node instanceof Sequence sequence) {
      return sequence.nodes().stream().anyMatch(this::isWithin);
    }
    return node instanceof Mapping mapping
        && mapping.members().stream()
            .anyMatch(e -> (e.line() > 0 && isAt(e)) || isWithin(e.value()));
  }

  private boolean isAt(int line, int column) {
    return line > 0
        && found.stream().anyMatch(fault -> fault.line() == line && fault.column() == column);
  }

  /** How many there are so far. */
  public int count() {
    return count;
  }

  /** The faults by place, at most 200 and a last one that says how many more there are. */
  public List<Fault> list() {
    List<Fault> all = new ArrayList<>(found);
    all.sort(
        (a, b) ->
            a.line() != b.line() ? a.line() - b.line() : Integer.compare(a.column(), b.column()));
    if (count > MOST) {
      all.add(
          new Fault(
              0, 0, "more faults", String.valueOf(count - MOST), "mend the first ones first"));
    }
    return all;
  }
}
