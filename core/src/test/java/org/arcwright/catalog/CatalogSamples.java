package org.arcwright.catalog;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Exercises for tests that care for a few of their parts only. */
public final class CatalogSamples {
  private CatalogSamples() {}

  /** An exercise for 3 to 30 people that takes 5 to 10 minutes. */
  public static Exercise exercise(String id, Set<String> yields) {
    Minutes minutes =
        new Minutes(Duration.ofMinutes(5), Duration.ofMinutes(8), Duration.ofMinutes(10));
    return exercise(
        id,
        new SizeRange(3, 30),
        Optional.empty(),
        List.of(new Step("Talk.", Speaker.ALL, Format.PLENARY, minutes, Per.SESSION, 1)),
        yields);
  }

  /** An exercise of these parts. */
  public static Exercise exercise(
      String id,
      SizeRange people,
      Optional<SizeRange> breakout,
      List<Step> steps,
      Set<String> yields) {
    Suitability fit = new Suitability(3, "As it stands.", Set.of());
    return new Exercise(
        id,
        "Title of " + id,
        Kind.DIVERGENT,
        "For a test.",
        people,
        breakout,
        2,
        0,
        false,
        Set.of(),
        yields,
        "Let us begin.",
        steps,
        Map.of(Mode.REMOTE, fit, Mode.IN_PERSON, fit, Mode.HYBRID, fit),
        new Exercise.Care(List.of(), Optional.empty(), List.of("Sit down.")),
        new Exercise.Notes(List.of(), List.of("The time."), List.of(), "Words."),
        new Source.CommonPractice());
  }
}
