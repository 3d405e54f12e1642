package org.arcwright.format;

import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;

/** Writes an exercise as {@link ExerciseReader} reads it, leaving out what may be left out. */
final class ExerciseWriter {
  private ExerciseWriter() {}

  static Node tree(Exercise exercise) {
    Branch branch =
        new Branch()
            .put("id", exercise.id())
            .put("title", exercise.title())
            .put("kind", exercise.kind().word())
            .put("purpose", exercise.purpose())
            .put("people", size(exercise.people()));
    exercise.breakout().ifPresent(size -> branch.put("breakout", size(size)));
    branch.put("energy", exercise.energy()).put("openness", exercise.openness());
    if (exercise.moves()) {
      branch.put("moves", true);
    }
    return branch
        .putSome("needs", exercise.needs())
        .put("yields", exercise.yields())
        .put("opening", exercise.opening())
        .put("steps", Branch.list(exercise.steps(), ExerciseWriter::step))
        .put("modes", modes(exercise))
        .putSome("materials", exercise.notes().materials())
        .putSome("cautions", exercise.care().cautions())
        .put("opt-out", exercise.care().optOut())
        .put("watch", exercise.notes().watch())
        .put("access", exercise.care().access())
        .put("carry-over", exercise.notes().carryOver())
        .putSome("tips", exercise.notes().tips())
        .put("source", source(exercise.source()))
        .end();
  }

  private static Node size(SizeRange size) {
    return new Branch().put("min", size.min()).put("max", size.max()).end();
  }

  private static Node step(Step step) {
    Branch branch =
        new Branch()
            .put("text", step.text())
            .put("who", step.speaker().word())
            .put("format", step.format().word())
            .put("minutes", minutes(step.minutes()));
    if (step.per() != Per.SESSION) {
      branch.put("per", step.per().word());
    }
    if (step.per() == Per.ROUND) {
      branch.put("rounds", step.rounds());
    }
    return branch.end();
  }

  private static Node minutes(Minutes minutes) {
    return Branch.list(List.of(minutes.min(), minutes.typical(), minutes.max()), Times::minutes);
  }

  private static Node modes(Exercise exercise) {
    Branch branch = new Branch();
    for (Mode mode : Mode.values()) {
      Suitability suitability = exercise.in(mode);
      branch.put(
          mode.word(),
          new Branch()
              .put("fit", suitability.fit())
              .put("tools", suitability.tools())
              .put("how", suitability.adaptation())
              .putSome("cautions", suitability.cautions())
              .end());
    }
    return branch.end();
  }

  private static Node source(Source source) {
    if (source instanceof Source.Published published) {
      return marked(ExerciseReader.Mark.PUBLISHED).put("cite", published.citation()).end();
    }
    if (source instanceof Source.Memory memory) {
      return marked(ExerciseReader.Mark.MEMORY).put("cite", memory.citation()).end();
    }
    return marked(ExerciseReader.Mark.COMMON_PRACTICE).end();
  }

  private static Branch marked(ExerciseReader.Mark mark) {
    return new Branch().put("mark", mark.word());
  }
}
