package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.arcwright.catalog.Word;

/**
 * Reads what {@link CompiledWriter} wrote, each value as an argument of its constructor, which
 * checks it. There are no lambdas here and no trees: both would take a program that has just
 * started longer than the values themselves.
 */
final class CompiledReader {
  /** Changes whenever the order of values does. */
  static final int VERSION = 0x41524302;

  private final byte[] bytes;
  private final ByteBuffer in;

  private CompiledReader(byte[] bytes) {
    this.bytes = bytes;
    this.in = ByteBuffer.wrap(bytes);
  }

  static Catalog read(byte[] bytes) throws IOException {
    try {
      return new CompiledReader(bytes).catalog();
    } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw new IOException("damaged, or compiled for another version", e);
    }
  }

  private Catalog catalog() throws IOException {
    if (in.getInt() != VERSION) {
      throw new IOException("compiled for another version");
    }
    List<Product> products = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      products.add(new Product(text(), text(), text()));
    }
    List<Tool> tools = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      tools.add(new Tool(text(), text(), text(), words(Mode.class)));
    }
    List<Exercise> exercises = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      exercises.add(exercise());
    }
    List<Goal> goals = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      goals.add(goal());
    }
    return Catalog.of(products, tools, exercises, goals);
  }

  private Exercise exercise() {
    return new Exercise(
        text(),
        text(),
        word(Kind.class),
        text(),
        size(),
        flag() ? Optional.of(size()) : Optional.empty(),
        in.getInt(),
        in.getInt(),
        flag(),
        Checks.ids("needs", texts()),
        Checks.ids("yields", texts()),
        text(),
        steps(),
        modes(),
        new Exercise.Care(texts(), flag() ? Optional.of(text()) : Optional.empty(), texts()),
        new Exercise.Notes(texts(), texts(), texts(), text()),
        source());
  }

  private SizeRange size() {
    return new SizeRange(in.getInt(), in.getInt());
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      steps.add(
          new Step(
              text(),
              word(Speaker.class),
              word(Format.class),
              new Minutes(time(), time(), time()),
              word(Per.class),
              in.getInt()));
    }
    return steps;
  }

  private Duration time() {
    return Duration.ofMillis(in.getLong());
  }

  private Map<Mode, Suitability> modes() {
    Map<Mode, Suitability> modes = new EnumMap<>(Mode.class);
    for (Mode mode : Mode.values()) {
      modes.put(mode, Suitability.of(in.getInt(), text(), texts(), texts()));
    }
    return modes;
  }

  private Source source() {
    return switch (word(ExerciseReader.Mark.class)) {
      case PUBLISHED -> new Source.Published(text());
      case MEMORY -> new Source.Memory(text());
      case COMMON_PRACTICE -> new Source.CommonPractice();
    };
  }

  private Goal goal() {
    return new Goal(
        text(),
        text(),
        text(),
        Checks.ids("yields", texts()),
        Checks.ids("given", texts()),
        texts(),
        arc());
  }

  private List<Phase> arc() {
    List<Phase> arc = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      arc.add(
          new Phase(
              text(),
              text(),
              words(Kind.class),
              in.getInt(),
              in.getInt(),
              new Phase.Share(in.getInt(), in.getInt(), in.getInt()),
              Checks.ids("yields", texts())));
    }
    return arc;
  }

  private <E extends Enum<E> & Word> Set<E> words(Class<E> type) {
    Set<E> words = EnumSet.noneOf(type);
    for (int left = in.getInt(); left > 0; left--) {
      words.add(word(type));
    }
    return words;
  }

  private <E extends Enum<E> & Word> E word(Class<E> type) {
    String text = text();
    Optional<E> word = Word.find(type, text);
    if (word.isEmpty()) {
      throw new IllegalArgumentException(text);
    }
    return word.get();
  }

  private List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      texts.add(text());
    }
    return texts;
  }

  private boolean flag() {
    return in.get() != 0;
  }

  private String text() {
    int length = in.getInt();
    String text = new String(bytes, in.position(), length, UTF_8);
    in.position(in.position() + length);
    return text;
  }
}
