package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;

/** An exercise for tests: one step, for everybody, everywhere, until told otherwise. */
public final class SampleExercise {
  private final String id;
  private final Kind kind;
  private final Minutes minutes;
  private SizeRange people = new SizeRange(1, 200);
  private Optional<SizeRange> breakout = Optional.empty();
  private int energy = 3;
  private int openness = 0;
  private Format format = Format.PLENARY;
  private Set<String> needs = Set.of();
  private Set<String> yields;
  private final Map<Mode, Suitability> modes = new EnumMap<>(Mode.class);

  private SampleExercise(String id, Kind kind, Minutes minutes, Set<String> yields) {
    this.id = id;
    this.kind = kind;
    this.minutes = minutes;
    this.yields = yields;
    for (Mode mode : Mode.values()) {
      modes.put(mode, new Suitability(3, "as ever", Set.of()));
    }
  }

  public static SampleExercise of(
      String id, Kind kind, double min, double typical, double max, String... yields) {
    return new SampleExercise(
        id, kind, new Minutes(time(min), time(typical), time(max)), Set.of(yields));
  }

  private static Duration time(double minutes) {
    return Duration.ofSeconds(Math.round(60 * minutes));
  }

  public SampleExercise people(int min, int max) {
    people = new SizeRange(min, max);
    return this;
  }

  public SampleExercise groups(int min, int max) {
    breakout = Optional.of(new SizeRange(min, max));
    return format(Format.SMALL_GROUPS);
  }

  public SampleExercise energy(int value) {
    energy = value;
    return this;
  }

  public SampleExercise openness(int value) {
    openness = value;
    return this;
  }

  public SampleExercise format(Format value) {
    format = value;
    return this;
  }

  public SampleExercise needs(String... products) {
    needs = Set.of(products);
    return this;
  }

  public SampleExercise in(Mode mode, int fit, String... tools) {
    modes.put(mode, new Suitability(fit, "as ever", Set.of(tools)));
    return this;
  }

  public Exercise build() {
    return new Exercise(
        id,
        "The " + id,
        kind,
        "A sample.",
        people,
        breakout,
        energy,
        openness,
        false,
        needs,
        yields,
        "Let us begin.",
        List.of(new Step("Do it.", Speaker.ALL, format, minutes, Per.SESSION, 1)),
        modes,
        new Exercise.Care(
            List.of("Nobody has to share."), Optional.of("You may pass."), List.of("Read aloud.")),
        new Exercise.Notes(List.of(), List.of(), List.of(), "What was said."),
        new Source.CommonPractice());
  }
}
