package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Duration;
import java.util.Collection;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.arcwright.catalog.Word;

/**
 * Writes a catalog value after value, without names, in the order in which {@link CompiledReader}
 * hands them to the constructors.
 */
final class CompiledWriter {
  private final DataOutputStream out;

  private CompiledWriter(OutputStream out) {
    this.out = new DataOutputStream(out);
  }

  static void write(Catalog catalog, OutputStream out) throws IOException {
    new CompiledWriter(out).catalog(catalog);
  }

  private void catalog(Catalog catalog) throws IOException {
    out.writeInt(CompiledReader.VERSION);
    out.writeInt(catalog.products().size());
    for (Product product : catalog.products().values()) {
      text(product.id());
      text(product.title());
      text(product.meaning());
    }
    out.writeInt(catalog.tools().size());
    for (Tool tool : catalog.tools().values()) {
      text(tool.id());
      text(tool.title());
      text(tool.meaning());
      words(tool.modes());
    }
    out.writeInt(catalog.exercises().size());
    for (Exercise exercise : catalog.exercises().values()) {
      exercise(exercise);
    }
    out.writeInt(catalog.goals().size());
    for (Goal goal : catalog.goals().values()) {
      goal(goal);
    }
    out.flush();
  }

  private void exercise(Exercise exercise) throws IOException {
    text(exercise.id());
    text(exercise.title());
    text(exercise.kind().word());
    text(exercise.purpose());
    size(exercise.people());
    out.writeBoolean(exercise.breakout().isPresent());
    if (exercise.breakout().isPresent()) {
      size(exercise.breakout().get());
    }
    out.writeInt(exercise.energy());
    out.writeInt(exercise.openness());
    out.writeBoolean(exercise.moves());
    texts(exercise.needs());
    texts(exercise.yields());
    text(exercise.opening());
    out.writeInt(exercise.steps().size());
    for (Step step : exercise.steps()) {
      step(step);
    }
    for (Mode mode : Mode.values()) {
      Suitability suitability = exercise.in(mode);
      out.writeInt(suitability.fit());
      text(suitability.adaptation());
      texts(suitability.tools());
      texts(suitability.cautions());
    }
    texts(exercise.care().cautions());
    optional(exercise.care().optOut());
    texts(exercise.care().access());
    texts(exercise.notes().materials());
    texts(exercise.notes().watch());
    texts(exercise.notes().tips());
    text(exercise.notes().carryOver());
    source(exercise.source());
  }

  private void size(SizeRange size) throws IOException {
    out.writeInt(size.min());
    out.writeInt(size.max());
  }

  private void step(Step step) throws IOException {
    text(step.text());
    text(step.speaker().word());
    text(step.format().word());
    time(step.minutes().min());
    time(step.minutes().typical());
    time(step.minutes().max());
    text(step.per().word());
    out.writeInt(step.rounds());
  }

  private void time(Duration time) throws IOException {
    out.writeLong(time.toMillis());
  }

  private void source(Source source) throws IOException {
    if (source instanceof Source.Published published) {
      text(ExerciseReader.Mark.PUBLISHED.word());
      text(published.citation());
    } else if (source instanceof Source.Memory memory) {
      text(ExerciseReader.Mark.MEMORY.word());
      text(memory.citation());
    } else {
      text(ExerciseReader.Mark.COMMON_PRACTICE.word());
    }
  }

  private void goal(Goal goal) throws IOException {
    text(goal.id());
    text(goal.title());
    text(goal.purpose());
    texts(goal.yields());
    texts(goal.given());
    texts(goal.cautions());
    out.writeInt(goal.arc().size());
    for (Phase phase : goal.arc()) {
      text(phase.name());
      text(phase.title());
      words(phase.kinds());
      out.writeInt(phase.fewest());
      out.writeInt(phase.most());
      out.writeInt(phase.share().min());
      out.writeInt(phase.share().target());
      out.writeInt(phase.share().max());
      texts(phase.yields());
    }
  }

  private void words(Collection<? extends Word> words) throws IOException {
    out.writeInt(words.size());
    for (Word word : words) {
      text(word.word());
    }
  }

  private void texts(Collection<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      text(text);
    }
  }

  private void optional(Optional<String> text) throws IOException {
    out.writeBoolean(text.isPresent());
    if (text.isPresent()) {
      text(text.get());
    }
  }

  private void text(String text) throws IOException {
    byte[] bytes = text.getBytes(UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }
}
