package org.arcwright.format;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.catalog.AtSize;
import org.arcwright.catalog.AtSize.StepAtSize;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Split;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;

/** What is known about a shelf, in JSON for other programs. */
public final class ShelfFormat {
  private ShelfFormat() {}

  /**
   * Exercises, with the minutes that each takes.
   *
   * @param exercises each as it is run with so many people
   * @param layer the name of the layer that an exercise comes from
   */
  public static String write(List<AtSize> exercises, Function<Exercise, String> layer) {
    return JsonWriter.write(
        new Branch().put("exercises", Branch.list(exercises, e -> row(e, layer))).end());
  }

  private static Node row(AtSize sized, Function<Exercise, String> layer) {
    Exercise exercise = sized.exercise();
    Branch fit = new Branch();
    Branch tools = new Branch();
    for (Mode mode : Mode.values()) {
      fit.put(mode.word(), exercise.in(mode).fit());
      tools.put(mode.word(), exercise.in(mode).tools());
    }
    return new Branch()
        .put("id", exercise.id())
        .put("title", exercise.title())
        .put("kind", exercise.kind().word())
        .put("purpose", exercise.purpose())
        .put("servesMin", exercise.people().min())
        .put("servesMax", exercise.people().max())
        .put("people", sized.people())
        .put("minutes", minutes(sized.minutes()))
        .put("energy", exercise.energy())
        .put("openness", exercise.openness())
        .put("moves", exercise.moves())
        .put("needs", exercise.needs())
        .put("yields", exercise.yields())
        .put("fit", fit.end())
        .put("tools", tools.end())
        .put("layer", layer.apply(exercise))
        .end();
  }

  /** An exercise as it is run with so many people, and the layer that it comes from. */
  public static String write(AtSize sized, String layer) {
    return JsonWriter.write(
        new Branch()
            .put("exercise", ExerciseWriter.tree(sized.exercise()))
            .put("people", sized.people())
            .put("minutes", minutes(sized.minutes()))
            .put("steps", Branch.list(sized.steps(), ShelfFormat::step))
            .put("layer", layer)
            .end());
  }

  private static Node step(StepAtSize step) {
    return new Branch()
        .put("times", step.times())
        .put("minutes", minutes(step.minutes()))
        .put("groups", groups(step.groups()))
        .end();
  }

  private static Node groups(Optional<Split> groups) {
    if (groups.isEmpty()) {
      return Branch.list(List.<Node>of(), node -> node);
    }
    Split split = groups.get();
    int smaller = split.groups() - split.larger();
    List<Node> sizes =
        split.larger() == 0
            ? List.of(group(split.smaller(), smaller))
            : List.of(group(split.smaller() + 1, split.larger()), group(split.smaller(), smaller));
    return Branch.list(sizes, node -> node);
  }

  private static Node group(int size, int count) {
    return new Branch().put("size", size).put("count", count).end();
  }

  /** A goal, and the layer that it comes from. */
  public static String write(Goal goal, String layer) {
    return JsonWriter.write(
        new Branch().put("goal", GoalForm.tree(goal)).put("layer", layer).end());
  }

  /**
   * What a check found.
   *
   * @param entries how many were looked at
   * @param problems what is wrong
   * @param replaced ids of entries below that they take the place of
   */
  public static String write(
      int entries, Collection<Problem> problems, Collection<String> replaced) {
    return JsonWriter.write(
        new Branch()
            .put("entries", entries)
            .put("problems", Branch.list(problems, ProblemsFormat::tree))
            .put("replaced", replaced)
            .end());
  }

  private static Node minutes(Minutes minutes) {
    return Branch.list(List.of(minutes.min(), minutes.typical(), minutes.max()), Times::minutes);
  }
}
