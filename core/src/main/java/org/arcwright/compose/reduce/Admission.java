package org.arcwright.compose.reduce;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.jspecify.annotations.Nullable;

/** Whether the brief allows an exercise, before any thought of time or order. */
final class Admission {
  private final int people;
  private final int openness;
  private final Mode mode;
  private final Set<String> leaveOut;
  private final Set<Kind> kinds;
  private final Set<String> tools;
  private final Map<String, Tool> words;

  Admission(Brief brief, Goal goal, Catalog catalog) {
    this.people = brief.group().count();
    this.openness = brief.group().openness();
    this.mode = brief.mode();
    this.leaveOut = brief.wishes().leaveOut();
    this.kinds = EnumSet.noneOf(Kind.class);
    goal.arc().forEach(phase -> kinds.addAll(phase.kinds()));
    this.tools = brief.tools().isEmpty() ? usual(mode, catalog) : brief.tools();
    this.words = catalog.tools();
  }

  private static Set<String> usual(Mode mode, Catalog catalog) {
    Set<String> usual = new LinkedHashSet<>();
    for (Tool tool : catalog.tools().values()) {
      if (tool.modes().contains(mode)) {
        usual.add(tool.id());
      }
    }
    return usual;
  }

  /** Why the exercise is left out, by what comes first in this order; null if it is not. */
  @Nullable Refusal refusal(Exercise exercise) {
    if (leaveOut.contains(exercise.id())) {
      return Refusal.BY_NAME;
    }
    if (!kinds.contains(exercise.kind())) {
      return Refusal.by(
          "goal",
          "of the kind \"" + exercise.kind().word() + "\", for which this goal has no phase");
    }
    if (!exercise.people().contains(people)) {
      return notFor("made for " + exercise.people().min() + " to " + exercise.people().max());
    }
    if (!exercise.serves(people)) {
      return notFor(
          "they do not split into groups of "
              + exercise.breakout().map(Object::toString).orElse("any size"));
    }
    Suitability suitability = exercise.in(mode);
    if (suitability.fit() == 0) {
      return Refusal.by("mode", "not possible " + where(mode));
    }
    for (String tool : suitability.tools()) {
      if (!tools.contains(tool)) {
        return Refusal.by("tools", "needs what is not at hand: " + word(tool));
      }
    }
    if (exercise.openness() > openness) {
      return Refusal.by(
          "people.openness",
          "too personal for this group: openness "
              + exercise.openness()
              + ", at most "
              + openness
              + " here");
    }
    return null;
  }

  private Refusal notFor(String but) {
    return Refusal.by(
        "people", "not for " + people + (people == 1 ? " person: " : " people: ") + but);
  }

  private String word(String tool) {
    Tool known = words.get(tool);
    return known == null ? tool : known.title();
  }

  /** How people come together in a mode, as an adverb. */
  static String where(Mode mode) {
    return switch (mode) {
      case REMOTE -> "remotely";
      case IN_PERSON -> "in person";
      case HYBRID -> "with some in a room and some at screens";
    };
  }
}
