package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.arcwright.catalog.AtSize;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Layers;
import org.arcwright.catalog.Layers.Origin;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.document.ExercisePage;
import org.arcwright.cli.document.GoalPage;
import org.arcwright.format.ShelfFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One exercise as a facilitator runs it, or a goal with its arc. */
@Command(
    name = "show",
    description = {
      "Shows an exercise as you run it with so many people: what to say, each step with its minutes"
          + " and groups, what to heed. Also shows a goal with its arc.",
      ""
    },
    footer = {"", "Try:  arcwright catalog show dot-voting --people 12 --mode remote"},
    sortOptions = false)
final class CatalogShowCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "ID", description = "id of an exercise or a goal")
  private String id = "";

  @Option(
      names = "--people",
      paramLabel = "N",
      description = "for so many; for 12 or the nearest it serves if not given")
  private Optional<Integer> people = Optional.empty();

  @Option(
      names = "--mode",
      paramLabel = "MODE",
      converter = WordConverter.Modes.class,
      description = "for remote, in-person or hybrid; for all if not given")
  private Optional<Mode> mode = Optional.empty();

  @Mixin private FormOption form = new FormOption();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogShowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Layers layers = catalogs.read(more, terminal);
    Optional<Goal> goal = layers.catalog().goal(id);
    if (goal.isPresent()) {
      show(goal.get(), layers);
      return Exit.DONE;
    }
    Exercise exercise = exercise(layers);
    int size = people.orElse(exercise.nearest(CatalogListCommand.USUAL_PEOPLE));
    if (!exercise.serves(size)) {
      terminal.out().println(notServed(exercise, size));
      return Exit.NEGATIVE;
    }
    show(AtSize.of(exercise, size), layers);
    return Exit.DONE;
  }

  private Exercise exercise(Layers layers) {
    if (layers.catalog().exercise(id).isEmpty() && layers.ofExercise(id).isEmpty()) {
      TreeSet<String> known = new TreeSet<>(layers.catalog().exercises().keySet());
      known.addAll(layers.catalog().goals().keySet());
      throw Wanted.unknown("exercise or goal", id, known);
    }
    return Wanted.exercise(layers, id);
  }

  private static String notServed(Exercise exercise, int size) {
    return "\""
        + exercise.title()
        + "\" serves "
        + exercise.people()
        + " people"
        + exercise.breakout().map(groups -> " in groups of " + groups).orElse("")
        + ", not "
        + size
        + "; the nearest number is "
        + exercise.nearest(size)
        + ".";
  }

  private void show(AtSize sized, Layers layers) {
    Origin origin = layers.ofExercise(id).orElseThrow();
    terminal
        .out()
        .print(
            form.isJson()
                ? ShelfFormat.write(sized, origin.layer())
                : ExercisePage.write(
                    sized,
                    mode,
                    origin,
                    layers.catalog(),
                    terminal.marks(),
                    terminal.style(),
                    terminal.width()));
  }

  private void show(Goal goal, Layers layers) {
    Origin origin = layers.ofGoal(id).orElseThrow();
    terminal
        .out()
        .print(
            form.isJson()
                ? ShelfFormat.write(goal, origin.layer())
                : GoalPage.write(
                    goal,
                    origin,
                    layers.catalog(),
                    terminal.marks(),
                    terminal.style(),
                    terminal.width()));
  }
}
