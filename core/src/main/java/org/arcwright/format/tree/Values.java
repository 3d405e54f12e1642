package org.arcwright.format.tree;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;

/** Nodes as values of a kind; a node of another kind is a fault and gives nothing. */
public final class Values {
  private Values() {}

  /** A text. */
  public static Optional<String> text(Node node, String what, Faults faults) {
    if (node instanceof Scalar scalar && scalar.type() == ScalarType.TEXT) {
      return Optional.of(scalar.text());
    }
    boolean bare = node instanceof Scalar && !node.isNothing();
    faults.add(node, what, bare ? "a text is right; put it in quotes" : "a text is right");
    return Optional.empty();
  }

  /** A whole number that fits an {@code int}. */
  public static Optional<Integer> whole(Node node, String what, Faults faults) {
    Optional<Long> number = longWhole(node, what, faults);
    if (number.isPresent() && number.get() != number.get().intValue()) {
      faults.add(node, what, tooLarge(Integer.MAX_VALUE));
      return Optional.empty();
    }
    return number.isEmpty() ? Optional.empty() : Optional.of(number.get().intValue());
  }

  /** A whole number that fits a {@code long}. */
  public static Optional<Long> longWhole(Node node, String what, Faults faults) {
    if (node instanceof Scalar scalar && scalar.type() == ScalarType.WHOLE) {
      try {
        return Optional.of(Long.parseLong(scalar.text()));
      } catch (NumberFormatException e) {
        faults.add(node, what, tooLarge(Long.MAX_VALUE));
        return Optional.empty();
      }
    }
    faults.add(node, what, "a whole number is right");
    return Optional.empty();
  }

  private static String tooLarge(long most) {
    return "a whole number up to " + most + " is right";
  }

  /** A number of at most twelve characters, without an exponent. */
  public static Optional<BigDecimal> number(Node node, String what, Faults faults) {
    if (node instanceof Scalar scalar
        && (scalar.type() == ScalarType.WHOLE || scalar.type() == ScalarType.DECIMAL)
        && scalar.text().length() <= 12) {
      try {
        BigDecimal number = new BigDecimal(scalar.text());
        if (scalar.text().toLowerCase(Locale.ROOT).indexOf('e') < 0) {
          return Optional.of(number);
        }
      } catch (NumberFormatException e) {
        // YAML's .inf and .nan are no numbers here
      }
    }
    faults.add(node, what, "a number is right, such as 3 or 2.5");
    return Optional.empty();
  }

  /** {@code true} or {@code false}. */
  public static Optional<Boolean> flag(Node node, String what, Faults faults) {
    if (node instanceof Scalar scalar && scalar.type() == ScalarType.FLAG) {
      return Optional.of(scalar.text().equals("true"));
    }
    faults.add(node, what, "true or false is right");
    return Optional.empty();
  }

  /** One of an enumeration's words. */
  public static <E extends Enum<E> & Word> Optional<E> word(
      Node node, String what, Class<E> type, Faults faults) {
    String text = node instanceof Scalar scalar ? scalar.text() : "";
    Optional<E> found = Word.find(type, text);
    if (found.isEmpty()) {
      List<String> words = Arrays.stream(type.getEnumConstants()).map(Word::word).toList();
      Optional<String> near = text.isEmpty() ? Optional.empty() : Nearest.to(text, words);
      faults.add(
          node,
          what,
          near.map(word -> "perhaps " + word).orElseGet(() -> Word.all(type) + " is right"));
    }
    return found;
  }

  /** A value whose constructor may refuse it; that becomes a fault at the node. */
  public static <T> Optional<T> build(Node node, Faults faults, Supplier<T> constructor) {
    try {
      return Optional.of(constructor.get());
    } catch (InvalidValueException e) {
      faults.add(node, e.field(), e.value(), e.remedy());
      return Optional.empty();
    }
  }

  /** A list whose elements are read one by one; those that are faulty are left out. */
  public static <T> List<T> list(
      Node node, String what, Faults faults, BiFunction<Node, Faults, Optional<T>> element) {
    List<T> values = new ArrayList<>();
    for (Node child : nodes(node, what, faults)) {
      element.apply(child, faults).ifPresent(values::add);
    }
    return values;
  }

  /** A list of texts. */
  public static List<String> texts(Node node, String what, Faults faults) {
    List<String> texts = new ArrayList<>();
    for (Node child : nodes(node, what, faults)) {
      text(child, what, faults).ifPresent(texts::add);
    }
    return texts;
  }

  /** A list of whole numbers. */
  public static List<Integer> wholes(Node node, String what, Faults faults) {
    List<Integer> numbers = new ArrayList<>();
    for (Node child : nodes(node, what, faults)) {
      whole(child, what, faults).ifPresent(numbers::add);
    }
    return numbers;
  }

  /** The nodes of a list. */
  public static List<Node> nodes(Node node, String what, Faults faults) {
    if (node instanceof Sequence sequence) {
      return sequence.nodes();
    }
    faults.add(node, what, "a list is right, such as [a, b]");
    return List.of();
  }
}
