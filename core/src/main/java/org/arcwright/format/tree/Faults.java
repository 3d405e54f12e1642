package org.arcwright.format.tree;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong in one file, in the order of finding. Not thread-safe. */
public final class Faults {
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
