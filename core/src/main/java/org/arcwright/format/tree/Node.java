package org.arcwright.format.tree;

import java.util.List;
import java.util.Optional;

/**
 * A value in a file and where it starts. Lines and columns count from 1; nodes that were not read
 * from a file stand at 0.
 */
public sealed interface Node {
  /** The line in which it starts. */
  int line();

  /** The column in which it starts. */
  int column();

  /** What a scalar is written as. */
  enum ScalarType {
    /** A text. */
    TEXT,
    /** A whole number. */
    WHOLE,
    /** A number with a point or an exponent. */
    DECIMAL,
    /** {@code true} or {@code false}. */
    FLAG,
    /** Nothing, or {@code null}. */
    NOTHING
  }

  /** A single value; {@code text} is what stands in the file, without quotes. */
  record Scalar(int line, int column, ScalarType type, String text) implements Node {}

  /** A list. */
  record Sequence(int line, int column, List<Node> nodes) implements Node {}

  /** Keys and their values, in order, each key once. */
  record Mapping(int line, int column, List<Member> members) implements Node {
    /** The entry with that key, if there is one. */
    public Optional<Member> find(String key) {
      for (Member entry : members) {
        if (entry.key().equals(key)) {
          return Optional.of(entry);
        }
      }
      return Optional.empty();
    }
  }

  /** A key, where it stands, and its value. */
  record Member(int line, int column, String key, Node value) {}

  /** Whether there is no value at all. */
  default boolean isNothing() {
    return this instanceof Scalar scalar && scalar.type() == ScalarType.NOTHING;
  }

  /** The value in a few words, for a message. */
  default String shown() {
    if (this instanceof Scalar scalar) {
      return scalar.type() == ScalarType.NOTHING || scalar.text().isBlank()
          ? "empty"
          : scalar.text();
    }
    return this instanceof Sequence ? "a list" : "keys and values";
  }

  /**
   * The node that a path such as {@code phases[2].count.min} names, or the last one on the way
   * there. In a list of two, {@code min} and {@code max} are the first and the last.
   */
  default Node at(String path) {
    Node node = this;
    for (String step : path.split("[.\\[\\]]+", -1)) {
      Optional<Node> next = node.child(step);
      if (next.isEmpty()) {
        return node;
      }
      node = next.get();
    }
    return node;
  }

  /** The node that a path such as {@code steps[2].text} names, if there is one. */
  default Optional<Node> lookUp(String path) {
    Optional<Node> node = Optional.of(this);
    for (String step : path.split("[.\\[\\]]+", 0)) {
      node = node.flatMap(parent -> parent.child(step));
    }
    return node;
  }

  private Optional<Node> child(String step) {
    if (this instanceof Mapping mapping) {
      return mapping.find(step).map(Member::value);
    }
    if (this instanceof Sequence sequence && !sequence.nodes().isEmpty()) {
      List<Node> nodes = sequence.nodes();
      if (step.equals("min") || step.equals("max")) {
        return Optional.of(nodes.get(step.equals("min") ? 0 : nodes.size() - 1));
      }
      return step.matches("\\d{1,9}") && Integer.parseInt(step) < nodes.size()
          ? Optional.of(nodes.get(Integer.parseInt(step)))
          : Optional.empty();
    }
    return Optional.empty();
  }
}
