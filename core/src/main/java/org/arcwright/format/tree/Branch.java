package org.arcwright.format.tree;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;

/** Builds a mapping that is to be written. */
public final class Branch {
  private final List<Member> members = new ArrayList<>();

  /** Adds an entry. */
  public Branch put(String key, Node value) {
    members.add(new Member(0, 0, key, value));
    return this;
  }

  /** Adds a text. */
  public Branch put(String key, String value) {
    return put(key, text(value));
  }

  /** Adds a whole number. */
  public Branch put(String key, long value) {
    return put(key, number(value));
  }

  /** Adds {@code true} or {@code false}. */
  public Branch put(String key, boolean value) {
    return put(key, flag(value));
  }

  /** Adds a text if there is one. */
  public Branch put(String key, Optional<String> value) {
    value.ifPresent(text -> put(key, text));
    return this;
  }

  /** Adds a list of texts. */
  public Branch put(String key, Collection<String> values) {
    return put(key, list(values, Branch::text));
  }

  /** Adds a list of texts unless it is empty. */
  public Branch putSome(String key, Collection<String> values) {
    return values.isEmpty() ? this : put(key, values);
  }

  /** The mapping. */
  public Node end() {
    return new Mapping(0, 0, members);
  }

  /** A text. */
  public static Node text(String value) {
    return new Scalar(0, 0, ScalarType.TEXT, value);
  }

  /** {@code true} or {@code false}. */
  public static Node flag(boolean value) {
    return new Scalar(0, 0, ScalarType.FLAG, String.valueOf(value));
  }

  /** A whole number. */
  public static Node number(long value) {
    return new Scalar(0, 0, ScalarType.WHOLE, String.valueOf(value));
  }

  /** A list of whole numbers. */
  public static Node numbers(Collection<Integer> values) {
    return list(values, value -> number(value));
  }

  /** A list. */
  public static <T> Node list(Collection<T> values, Function<? super T, Node> element) {
    List<Node> nodes = new ArrayList<>(values.size());
    for (T value : values) {
      nodes.add(element.apply(value));
    }
    return new Sequence(0, 0, nodes);
  }
}
