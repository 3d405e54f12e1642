package org.arcwright.cli;

import java.util.Arrays;
import java.util.List;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a word of the model as it is written in files. */
abstract class WordConverter<E extends Enum<E> & Word> implements ITypeConverter<E> {
  private final Class<E> type;

  private WordConverter(Class<E> type) {
    this.type = type;
  }

  @Override
  public E convert(String word) {
    List<String> words = Arrays.stream(type.getEnumConstants()).map(Word::word).toList();
    return Word.find(type, word)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "\""
                        + word
                        + "\" is none; "
                        + Nearest.to(word, words)
                            .map(near -> "perhaps " + near)
                            .orElseGet(() -> Word.all(type) + " is right")));
  }

  /** Kinds of exercise. */
  static final class Kinds extends WordConverter<Kind> {
    Kinds() {
      super(Kind.class);
    }
  }

  /** Where people are. */
  static final class Modes extends WordConverter<Mode> {
    Modes() {
      super(Mode.class);
    }
  }
}
