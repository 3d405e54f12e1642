package org.arcwright.catalog;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** A constant that is written as a lower-case word in files, commands and prose. */
public interface Word {
  /** The word as files have it, such as {@code small-groups}. */
  String word();

  /** The constant written so, if there is one. */
  static <E extends Enum<E> & Word> Optional<E> find(Class<E> type, String word) {
    for (E constant : type.getEnumConstants()) {
      if (constant.word().equals(word)) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }

  /** All words of the type, for a message: {@code solo, pairs, small-groups or plenary}. */
  static <E extends Enum<E> & Word> String all(Class<E> type) {
    String words =
        Arrays.stream(type.getEnumConstants()).map(Word::word).collect(Collectors.joining(", "));
    int last = words.lastIndexOf(", ");
    return last < 0 ? words : words.substring(0, last) + " or " + words.substring(last + 2);
  }
}
