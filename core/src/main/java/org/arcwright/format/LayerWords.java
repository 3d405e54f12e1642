package org.arcwright.format;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The words of one sort that the entries of a layer may use: its own and those below it. */
final class LayerWords<T> {
  private final Function<T, String> id;
  private final Set<String> known;
  private final Set<String> own = new HashSet<>();
  private final List<T> added = new ArrayList<>();
  private boolean complete = true;

  LayerWords(Set<String> below, Function<T, String> id) {
    this.id = id;
    this.known = new HashSet<>(below);
  }

  /** Adds words; {@code sound} says whether all of their file could be read. */
  void add(List<T> words, boolean sound) {
    for (T word : words) {
      if (own.add(id.apply(word))) {
        added.add(word);
        known.add(id.apply(word));
      }
    }
    complete &= sound;
  }

  /** The layer's own. */
  List<T> added() {
    return added;
  }

  /**
   * The words that may be used; none in particular if their file is faulty, for then every use of a
   * word would seem to be another fault.
   */
  Optional<Set<String>> vocabulary() {
    return complete ? Optional.of(known) : Optional.empty();
  }

  boolean haveAll(Collection<String> words) {
    return known.containsAll(words);
  }
}
