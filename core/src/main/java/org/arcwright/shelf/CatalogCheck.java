package org.arcwright.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Tool;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.FormatException;
import org.arcwright.format.LayerReading;
import org.arcwright.format.Problem;

/**
 * Holds the files of a catalog against good practice and tells every problem at once, each with its
 * place: all that the readers refuse, and what a catalog can be read with and nobody can work with
 * (sizes that do not split into groups, work products that come from nowhere, openings that are too
 * long to be said, cautions that are missing, exercises that are there twice). Immutable.
 */
public final class CatalogCheck {
  private final Catalog below;
  private final Likeness likeness;

  private CatalogCheck(Catalog below, Likeness likeness) {
    this.below = below;
    this.likeness = likeness;
  }

  /**
   * A check of what is to lie over another catalog.
   *
   * @param likeness finds exercises that are nearly the same; {@link Likeness#UNKNOWN} finds none
   */
  public static CatalogCheck over(Catalog below, Likeness likeness) {
    return new CatalogCheck(below, likeness);
  }

  /**
   * What was looked at and what was found.
   *
   * @param files how many entries
   * @param problems what is wrong, file by file and by place
   * @param replaced ids of entries below that these take the place of, or take out
   */
  public record Report(int files, List<Problem> problems, List<String> replaced) {
    /** Takes copies. */
    public Report {
      problems = List.copyOf(problems);
      replaced = List.copyOf(replaced);
    }
  }

  /**
   * Checks files and folders. What lies in a catalog folder is read together with the rest of it,
   * but only its own problems are told; all files that lie elsewhere are read together.
   *
   * @throws FormatException if there is no such file or folder, or nothing in it to check
   */
  public Report check(List<Path> paths) {
    List<Report> reports = new ArrayList<>();
    for (CheckedPaths group : CheckedPaths.of(paths)) {
      LayerReading reading =
          group
              .folder()
              .map(folder -> CatalogFormat.readLayer(folder, below))
              .orElseGet(() -> CatalogFormat.readLayer("files", group.wanted(), below));
      reports.add(group.only(reading, check(reading)));
    }
    return new Report(
        reports.stream().mapToInt(Report::files).sum(),
        reports.stream().flatMap(report -> report.problems().stream()).toList(),
        reports.stream().flatMap(report -> report.replaced().stream()).toList());
  }

  /** Checks a layer that was read over the same catalog. */
  public Report check(LayerReading reading) {
    Surroundings all = new Surroundings(reading);
    Map<String, List<Problem>> byFile = new LinkedHashMap<>();
    Set<String> entries = new HashSet<>();
    reading.files().forEach(file -> entries.add(file.name()));
    for (Problem problem : reading.problems()) {
      if (!entries.contains(problem.place().file())) {
        add(byFile, problem);
      }
    }
    reading.files().forEach(file -> byFile.putIfAbsent(file.name(), new ArrayList<>()));
    for (Problem problem : reading.problems()) {
      if (entries.contains(problem.place().file())) {
        add(byFile, problem);
      }
    }
    Doubles doubles = new Doubles(likeness, all.others());
    for (CatalogFile file : reading.files()) {
      file.exercise()
          .map(exercise -> problems(file, exercise, all, doubles))
          .ifPresent(found -> found.forEach(problem -> add(byFile, problem)));
      file.goal()
          .map(goal -> GoalRules.check(file, goal, all.exercises.values()))
          .ifPresent(found -> found.forEach(problem -> add(byFile, problem)));
    }
    List<Problem> problems = new ArrayList<>();
    byFile
        .values()
        .forEach(
            found -> {
              found.sort(
                  Comparator.<Problem>comparingInt(problem -> problem.place().line())
                      .thenComparingInt(problem -> problem.place().column()));
              problems.addAll(found);
            });
    return new Report(all.count(byFile.keySet()), problems, all.replaced());
  }

  private static void add(Map<String, List<Problem>> byFile, Problem problem) {
    byFile.computeIfAbsent(problem.place().file(), file -> new ArrayList<>()).add(problem);
  }

  private static List<Problem> problems(
      CatalogFile file, Exercise exercise, Surroundings all, Doubles doubles) {
    List<Problem> found = new ArrayList<>(ExerciseRules.check(file, exercise));
    found.addAll(ToolRules.check(file, exercise, all.tools));
    found.addAll(CareRules.check(file, exercise));
    found.addAll(all.words.check(file, exercise));
    found.addAll(doubles.check(file, exercise));
    return found;
  }

  /** All that there is with the layer, faulty entries as far as they can be read. */
  private final class Surroundings {
    private final LayerReading reading;
    private final Map<String, Tool> tools = new LinkedHashMap<>(below.tools());
    private final Map<String, Exercise> exercises = new LinkedHashMap<>(below.exercises());
    private final Map<String, Goal> goals = new LinkedHashMap<>(below.goals());
    private final WordUse words;

    Surroundings(LayerReading reading) {
      this.reading = reading;
      reading.layer().tools().forEach(tool -> tools.put(tool.id(), tool));
      exercises.keySet().removeAll(reading.layer().retiredExercises());
      goals.keySet().removeAll(reading.layer().retiredGoals());
      for (CatalogFile file : reading.files()) {
        file.exercise().ifPresent(exercise -> exercises.put(exercise.id(), exercise));
        file.goal().ifPresent(goal -> goals.put(goal.id(), goal));
      }
      this.words = new WordUse(exercises.values(), goals.values());
    }

    /** The exercises that stay as they are below. */
    List<Exercise> others() {
      Set<String> own = new HashSet<>();
      reading.files().forEach(file -> file.exercise().map(Exercise::id).ifPresent(own::add));
      return exercises.values().stream().filter(e -> !own.contains(e.id())).toList();
    }

    /** How many entries there are; a file that cannot be read counts as one. */
    int count(Set<String> names) {
      Set<String> unread = new HashSet<>(names);
      reading.files().forEach(file -> unread.remove(file.name()));
      return reading.files().size()
          + reading.layer().retiredExercises().size()
          + reading.layer().retiredGoals().size()
          + unread.size();
    }

    /** Ids of what stands below otherwise, or no longer. */
    List<String> replaced() {
      Set<String> ids = new TreeSet<>();
      for (Exercise own : reading.layer().exercises()) {
        below.exercise(own.id()).filter(e -> !e.equals(own)).ifPresent(e -> ids.add(e.id()));
      }
      for (Goal own : reading.layer().goals()) {
        below.goal(own.id()).filter(g -> !g.equals(own)).ifPresent(g -> ids.add(g.id()));
      }
      ids.addAll(reading.layer().retiredExercises());
      ids.addAll(reading.layer().retiredGoals());
      return List.copyOf(ids);
    }
  }
}
