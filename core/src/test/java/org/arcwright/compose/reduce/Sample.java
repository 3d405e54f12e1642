package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;

/** A small catalog with one goal, and briefs for it. */
public final class Sample {
  public static final String GOAL = "choose-a-venue";

  private Sample() {}

  public static List<Product> products() {
    return Stream.of(
            "arrival",
            "introductions",
            "question",
            "idea-pool",
            "shortlist",
            "decision",
            "takeaways",
            "feedback")
        .map(id -> new Product(id, id.replace('-', ' '), "It exists."))
        .toList();
  }

  public static List<Tool> tools() {
    return List.of(
        new Tool("call", "voice and video call", "Talk.", Set.of(Mode.REMOTE, Mode.HYBRID)),
        new Tool("breakouts", "breakout rooms", "Small talk.", Set.of(Mode.REMOTE)),
        new Tool("music", "shared music", "Sound.", Set.of()),
        new Tool("wall", "free wall", "Notes on it.", Set.of(Mode.IN_PERSON)));
  }

  public static Goal goal() {
    return new Goal(
        GOAL,
        "Choose a venue",
        "When the options are open and a choice is due.",
        Set.of("decision", "takeaways"),
        Set.of("question"),
        List.of(
            phase("open", Kind.ICEBREAKER, 1, 2, new Phase.Share(8, 12, 18), "arrival"),
            phase("explore", Kind.DIVERGENT, 1, 3, new Phase.Share(25, 35, 45), "idea-pool"),
            phase("narrow", Kind.CONVERGENT, 1, 2, new Phase.Share(15, 25, 35), "shortlist"),
            phase("decide", Kind.DECISION, 1, 2, new Phase.Share(12, 18, 28), "decision"),
            phase("close", Kind.REFLECTION, 1, 1, new Phase.Share(6, 10, 16), "takeaways")));
  }

  private static Phase phase(
      String name, Kind kind, int fewest, int most, Phase.Share share, String yields) {
    return new Phase(name, "To " + name, Set.of(kind), fewest, most, share, Set.of(yields));
  }

  /** Two exercises for each phase, a short calm one and a longer lively one. */
  public static List<Exercise> exercises() {
    return List.of(
        SampleExercise.of("names", Kind.ICEBREAKER, 5, 5, 10, "arrival", "introductions")
            .energy(2)
            .build(),
        SampleExercise.of("race", Kind.ICEBREAKER, 8, 10, 15, "arrival").energy(4).build(),
        SampleExercise.of("silent-list", Kind.DIVERGENT, 10, 15, 25, "idea-pool")
            .energy(2)
            .format(Format.SOLO)
            .build(),
        SampleExercise.of("carousel", Kind.DIVERGENT, 20, 30, 40, "idea-pool")
            .energy(4)
            .groups(3, 5)
            .build(),
        SampleExercise.of("dots", Kind.CONVERGENT, 10, 15, 20, "shortlist")
            .needs("idea-pool")
            .format(Format.SOLO)
            .build(),
        SampleExercise.of("sorting", Kind.CONVERGENT, 20, 25, 35, "shortlist")
            .needs("idea-pool")
            .groups(3, 5)
            .build(),
        SampleExercise.of("ballot", Kind.DECISION, 10, 10, 15, "decision")
            .needs("shortlist")
            .energy(1)
            .format(Format.SOLO)
            .build(),
        SampleExercise.of("both-sides", Kind.DECISION, 18, 24, 33, "decision")
            .needs("shortlist")
            .energy(4)
            .build(),
        SampleExercise.of("one-word", Kind.REFLECTION, 4, 5, 8, "takeaways").energy(2).build(),
        SampleExercise.of("pair-talk", Kind.REFLECTION, 10, 15, 20, "takeaways", "feedback")
            .format(Format.PAIRS)
            .build());
  }

  public static Catalog catalog(Exercise... more) {
    List<Exercise> exercises = new ArrayList<>(exercises());
    exercises.addAll(List.of(more));
    return only(exercises);
  }

  public static Catalog only(List<Exercise> exercises) {
    return Catalog.of(products(), tools(), exercises, List.of(goal()));
  }

  /** Eight people, remote. */
  public static BriefBuilder brief(int capMinutes) {
    return brief(Mode.REMOTE, 8, capMinutes);
  }

  public static BriefBuilder brief(Mode mode, int people, int capMinutes) {
    return Brief.builder("Where to meet", GOAL, mode, people, Duration.ofMinutes(capMinutes));
  }

  public static Reduction reduce(BriefBuilder brief, Exercise... more) {
    return Reducer.reduce(brief.build(), catalog(more), () -> false);
  }

  /** An exercise as eight people have it, on a grid of five minutes and in stretches of an hour. */
  static Allowed allowed(Exercise exercise) {
    return Allowed.of(exercise, 8, Lengths.of(exercise.minutes(8), 5, 60));
  }

  public static Candidate candidate(Reduction reduction, String id) {
    return reduction.instance().candidates().stream()
        .filter(candidate -> candidate.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " was left out: " + reduction.leftOut()));
  }

  public static Instance.Phase phase(Reduction reduction, String name) {
    return reduction.instance().phases().stream()
        .filter(phase -> phase.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  public static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
