package org.arcwright.format.tree;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;

/**
 * A mapping on its way to a record. What is wrong with a field is collected, and a stand-in is
 * returned; {@link #build} makes the record only if nothing was wrong since this mapping was begun.
 */
public final class Fields {
  private final Mapping mapping;
  private final boolean readable;
  private final Keys keys;
  private final Faults faults;
  private final int before;
  private final Map<String, Node> aliases = new HashMap<>();
  private final Map<String, Slot<?>> slots = new HashMap<>();

  private Fields(Mapping mapping, boolean readable, Keys keys, Faults faults, int before) {
    this.mapping = mapping;
    this.readable = readable;
    this.keys = keys;
    this.faults = faults;
    this.before = before;
  }

  /** Begins a mapping; another kind of node, and keys that it does not know, are faults. */
  public static Fields of(Node node, String what, Keys keys, Faults faults) {
    int before = faults.count();
    if (!(node instanceof Mapping mapping)) {
      faults.add(node, what, "keys and values are right, such as " + example(keys));
      Mapping none = new Mapping(node.line(), node.column(), List.of());
      return new Fields(none, false, keys, faults, before);
    }
    for (Member entry : mapping.members()) {
      if (!keys.names().contains(entry.key())) {
        faults.add(
            entry.line(),
            entry.column(),
            "unknown key",
            entry.key(),
            Nearest.to(entry.key(), keys.names())
                .map(near -> "perhaps " + near)
                .orElseGet(() -> "here stand " + String.join(", ", keys.names())));
      }
    }
    return new Fields(mapping, true, keys, faults, before);
  }

  private static String example(Keys keys) {
    String first = keys.names().iterator().next();
    return keys.remedy(first).replace("add it, such as ", "").replace("add it", first + ": ...");
  }

  /** The mapping. */
  public Node node() {
    return mapping;
  }

  /** The value of a key that may be left out. */
  public Optional<Node> optional(String key) {
    Optional<Member> member = mapping.find(key);
    return member.isEmpty() || member.get().value().isNothing()
        ? Optional.empty()
        : Optional.of(member.get().value());
  }

  /** The value of a key that must be there; its lack is a fault. */
  public Optional<Node> required(String key) {
    Optional<Member> member = mapping.find(key);
    if (member.isPresent() && member.get().value().isNothing()) {
      Member found = member.get();
      faults.add(found.line(), found.column(), "key without a value", key, keys.remedy(key));
    } else if (member.isEmpty() && readable) {
      faults.add(mapping, Faults.MISSING, key, keys.remedy(key));
    }
    return optional(key);
  }

  /** A text that must be there. */
  public String text(String key) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? "" : Values.text(node.get(), key, faults).orElse("");
  }

  /** A text that may be left out. */
  public Optional<String> optionalText(String key) {
    Optional<Node> node = optional(key);
    return node.isEmpty() ? Optional.empty() : Values.text(node.get(), key, faults);
  }

  /** A whole number that must be there. */
  public int whole(String key) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? 0 : Values.whole(node.get(), key, faults).orElse(0);
  }

  /** A whole number of any size that must be there. */
  public long longWhole(String key) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? 0 : Values.longWhole(node.get(), key, faults).orElse(0L);
  }

  /** A whole number that may be left out. */
  public Optional<Integer> optionalWhole(String key) {
    Optional<Node> node = optional(key);
    return node.isEmpty() ? Optional.empty() : Values.whole(node.get(), key, faults);
  }

  /** A flag; false if it is left out. */
  public boolean flag(String key) {
    Optional<Node> node = optional(key);
    return node.isPresent() && Values.flag(node.get(), key, faults).orElse(false);
  }

  /** A word that must be there. */
  public <E extends Enum<E> & Word> E word(Class<E> type, String key) {
    Optional<Node> node = required(key);
    Optional<E> word =
        node.isEmpty() ? Optional.empty() : Values.word(node.get(), key, type, faults);
    return word.orElse(type.getEnumConstants()[0]);
  }

  /** A word that may be left out. */
  public <E extends Enum<E> & Word> Optional<E> optionalWord(Class<E> type, String key) {
    Optional<Node> node = optional(key);
    return node.isEmpty() ? Optional.empty() : Values.word(node.get(), key, type, faults);
  }

  /** A list that must be there. */
  public <T> List<T> list(String key, BiFunction<Node, Faults, Optional<T>> element) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? List.of() : Values.list(node.get(), key, faults, element);
  }

  /** A list that may be left out, which is to leave it empty. */
  public <T> List<T> optionalList(String key, BiFunction<Node, Faults, Optional<T>> element) {
    return optional(key).isEmpty() ? List.of() : list(key, element);
  }

  /** A list of texts that must be there. */
  public List<String> texts(String key) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? List.of() : Values.texts(node.get(), key, faults);
  }

  /** A list of texts that may be left out. */
  public List<String> optionalTexts(String key) {
    return optional(key).isEmpty() ? List.of() : texts(key);
  }

  /** A list of whole numbers that must be there. */
  public List<Integer> wholes(String key) {
    Optional<Node> node = required(key);
    return node.isEmpty() ? List.of() : Values.wholes(node.get(), key, faults);
  }

  /** A list of another length is a fault. */
  public void checkLength(String key, int length, String example) {
    Optional<Node> node = optional(key);
    if (node.isPresent() && node.get() instanceof Sequence list && list.nodes().size() != length) {
      int size = list.nodes().size();
      String shown = size == 1 ? "1 value" : size + " values";
      faults.add(list, key, shown, length + " are right, such as " + example);
    }
  }

  /** Lets the record's own name for a field lead to a node that stands under another key. */
  public void alias(String field, Node node) {
    aliases.put(field, node);
  }

  /** Whether something is wrong with the value of a key. */
  public boolean isFaulty(String key) {
    Optional<Member> member = mapping.find(key);
    return member.isEmpty()
        ? faults.isMissing(mapping, key)
        : faults.isAt(member.get()) || faults.isWithin(member.get().value());
  }

  /** The value of a key, or a stand-in if something is wrong with it already. */
  public <T> T soundOr(String key, T value, T standIn) {
    return isFaulty(key) ? standIn : value;
  }

  /**
   * A value that the record may refuse: a stand-in takes its place then, so that the record looks
   * at all its other values, too.
   */
  public <T> Slot<T> slot(String key, T value, T standIn) {
    Slot<T> slot = new Slot<>(value, standIn);
    slots.put(key, slot);
    return slot;
  }

  /** A value, or what stands in for it. */
  public static final class Slot<T> implements Supplier<T> {
    private T value;
    private final T standIn;
    private boolean mended;

    private Slot(T value, T standIn) {
      this.value = value;
      this.standIn = standIn;
    }

    @Override
    public T get() {
      return value;
    }

    /** Puts the stand-in in place; false if it stands there already. */
    private boolean mend() {
      boolean first = !mended;
      value = standIn;
      mended = true;
      return first;
    }
  }

  /**
   * Makes the record. What its constructor refuses becomes a fault at the field's node, or in a
   * list of words at the word itself. Without slots there is no record if anything was wrong; with
   * slots it is made as far as it can be, and whoever wants it whole looks at the faults.
   */
  public <T> Optional<T> build(Supplier<T> constructor) {
    if (!readable || (faults.count() > before && slots.isEmpty())) {
      return Optional.empty();
    }
    while (true) {
      try {
        return Optional.of(constructor.get());
      } catch (InvalidValueException e) {
        refused(e);
        Slot<?> slot = slots.get(outermost(e.field()));
        if (slot == null || !slot.mend()) {
          return Optional.empty();
        }
      }
    }
  }

  /** A fault, unless the reader found one at the same place. */
  private void refused(InvalidValueException e) {
    Node node = place(e);
    boolean nowhere = node == mapping || node.isNothing();
    boolean known = nowhere ? isFaulty(outermost(e.field())) : faults.isWithin(node);
    if (!known) {
      faults.add(node, e.field(), node instanceof Scalar ? node.shown() : e.value(), e.remedy());
    }
  }

  private static String outermost(String field) {
    return field.split("[.\\[]", 2)[0];
  }

  private Node place(InvalidValueException e) {
    String first = outermost(e.field());
    Node alias = aliases.get(first);
    Node node =
        alias == null
            ? mapping.at(e.field())
            : alias.at(e.field().substring(first.length()).replaceFirst("^[.\\[]", ""));
    return node instanceof Sequence list ? named(list, e.value()).orElse(list) : node;
  }

  /** The last word of a list, or of its mappings, that the record refused. */
  private static Optional<Node> named(Sequence list, String word) {
    Optional<Node> last = Optional.empty();
    for (Node node : list.nodes()) {
      if (node instanceof Scalar scalar && scalar.text().equals(word)) {
        last = Optional.of(scalar);
      } else if (node instanceof Mapping mapping) {
        for (Member member : mapping.members()) {
          if (member.value() instanceof Scalar scalar && scalar.text().equals(word)) {
            last = Optional.of(scalar);
          }
        }
      }
    }
    return last;
  }
}
