package org.arcwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.arcwright.catalog.AtSize;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Layers;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.document.ExerciseTable;
import org.arcwright.format.ShelfFormat;
import org.arcwright.shelf.Selection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Exercises of the catalog, those that meet what is asked for. */
@Command(
    name = "list",
    description = {"Lists the exercises that meet all that you ask for.", ""},
    footer = {
      "",
      "Try:  arcwright catalog list --kind divergent --people 12 --minutes 15..30 --mode remote"
    },
    sortOptions = false)
final class CatalogListCommand implements Callable<Integer> {
  /** For whom minutes are shown if nobody says for how many. */
  static final int USUAL_PEOPLE = 12;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      split = ",",
      converter = WordConverter.Kinds.class,
      description =
          "icebreaker, divergent, convergent, decision or reflection; several with commas")
  private List<Kind> kinds = new ArrayList<>();

  @Option(
      names = "--goal",
      paramLabel = "GOAL",
      description = "of use for this goal, such as choose-a-direction")
  private Optional<String> goal = Optional.empty();

  @Option(names = "--people", paramLabel = "N", description = "serves that many people")
  private Optional<Integer> people = Optional.empty();

  @Option(
      names = "--minutes",
      paramLabel = "N",
      converter = Between.Converter.class,
      description = "can last so long: 20, 15..30 or ..20 minutes, those first that usually do")
  private Optional<Between> minutes = Optional.empty();

  @Option(
      names = "--mode",
      paramLabel = "MODE",
      converter = WordConverter.Modes.class,
      description = "can be run so: remote, in-person or hybrid")
  private Optional<Mode> mode = Optional.empty();

  @Option(
      names = "--tool",
      paramLabel = "TOOL",
      split = ",",
      description = "makes use of this tool, such as board")
  private List<String> tools = new ArrayList<>();

  @Option(
      names = "--without-tool",
      paramLabel = "TOOL",
      split = ",",
      description = "does without this tool; several with commas")
  private List<String> withoutTools = new ArrayList<>();

  @Option(
      names = "--energy",
      paramLabel = "N",
      converter = Between.Converter.class,
      description = "from 1 calm to 5 lively: 3, 2..3 or ..2")
  private Optional<Between> energy = Optional.empty();

  @Option(
      names = "--openness",
      paramLabel = "N",
      converter = Between.Converter.class,
      description = "from 0 nothing personal to 3 deeply personal: 1 or ..1")
  private Optional<Between> openness = Optional.empty();

  @Option(
      names = "--yields",
      paramLabel = "PRODUCT",
      split = ",",
      description = "leaves this work product, such as idea-pool")
  private List<String> yields = new ArrayList<>();

  @Option(names = "--text", paramLabel = "WORDS", description = "has all these words on its page")
  private Optional<String> text = Optional.empty();

  @Mixin private FormOption form = new FormOption();

  @Parameters(index = "0..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogListCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    refuse("--energy", energy, 1, 5);
    refuse("--openness", openness, 0, 3);
    refuse("--people", people.map(n -> new Between(n, n)), 1, 1000);
    Layers layers = catalogs.read(more, terminal);
    Catalog catalog = layers.catalog();
    Selection selection = selection(catalog);
    List<AtSize> found =
        selection.from(catalog).stream()
            .map(exercise -> AtSize.of(exercise, people.orElse(exercise.nearest(USUAL_PEOPLE))))
            .sorted(Comparator.comparingLong(this::off))
            .toList();
    if (form.isJson()) {
      terminal.out().print(ShelfFormat.write(found, exercise -> layer(layers, exercise)));
    } else if (found.isEmpty()) {
      terminal.out().print(nothing(selection, catalog));
    } else {
      terminal
          .out()
          .print(
              ExerciseTable.write(
                  found,
                  people,
                  catalog.exercises().size(),
                  terminal.marks(),
                  terminal.style(),
                  terminal.width()));
    }
    return found.isEmpty() ? Exit.NEGATIVE : Exit.DONE;
  }

  /** A range that no exercise can meet is a slip of the keys. */
  private static void refuse(String option, Optional<Between> wanted, int least, int most) {
    if (wanted.isPresent() && (wanted.get().most() < least || wanted.get().least() > most)) {
      throw new Refusal(
          option + " " + wanted.get() + ": from " + least + " to " + most + " is right");
    }
  }

  /** How far its usual time is from the minutes that are asked for. */
  private long off(AtSize sized) {
    if (minutes.isEmpty()) {
      return 0;
    }
    long usual = sized.minutes().typical().toSeconds();
    long least = minutes.get().least() * 60L;
    long most = minutes.get().most() * 60L;
    return Math.max(0, Math.max(least - usual, usual - most));
  }

  private static String layer(Layers layers, Exercise exercise) {
    return layers.ofExercise(exercise.id()).map(Layers.Origin::layer).orElse("");
  }

  private Selection selection(Catalog catalog) {
    Selection chosen = Selection.ALL;
    if (!kinds.isEmpty()) {
      chosen = chosen.with(Selection.kind("--kind", EnumSet.copyOf(kinds)));
    }
    if (goal.isPresent()) {
      String id = Wanted.word("goal", goal.get(), catalog.goals().keySet());
      Goal found = catalog.goal(id).orElseThrow();
      chosen = chosen.with(Selection.goal("--goal", found, catalog));
    }
    if (people.isPresent()) {
      chosen = chosen.with(Selection.people("--people", people.get()));
    }
    if (minutes.isPresent()) {
      chosen = chosen.with(minutes(minutes.get()));
    }
    if (mode.isPresent()) {
      chosen = chosen.with(Selection.mode("--mode", mode.get()));
    }
    Set<Mode> modes = mode.<Set<Mode>>map(EnumSet::of).orElseGet(() -> EnumSet.allOf(Mode.class));
    for (String tool : tools) {
      String id = Wanted.word("tool", tool, catalog.tools().keySet());
      chosen = chosen.with(Selection.tool("--tool " + id, id, modes));
    }
    for (String tool : withoutTools) {
      Wanted.word("tool", tool, catalog.tools().keySet());
    }
    if (!withoutTools.isEmpty()) {
      chosen =
          chosen.with(Selection.withoutTools("--without-tool", Set.copyOf(withoutTools), modes));
    }
    return byPage(chosen, catalog);
  }

  private Selection byPage(Selection begun, Catalog catalog) {
    Selection chosen = begun;
    if (energy.isPresent()) {
      chosen = chosen.with(Selection.energy("--energy", energy.get().least(), energy.get().most()));
    }
    if (openness.isPresent()) {
      chosen =
          chosen.with(
              Selection.openness("--openness", openness.get().least(), openness.get().most()));
    }
    for (String product : yields) {
      String id = Wanted.word("work product", product, catalog.products().keySet());
      chosen = chosen.with(Selection.yields("--yields " + id, id));
    }
    if (text.isPresent()) {
      chosen = chosen.with(Selection.text("--text", text.get()));
    }
    return chosen;
  }

  private Selection.Criterion minutes(Between range) {
    Duration least = Duration.ofMinutes(range.least());
    Duration most = Duration.ofMinutes(range.most());
    return people.isPresent()
        ? Selection.minutes("--minutes", least, most, people.get())
        : Selection.minutes("--minutes", least, most);
  }

  private static String nothing(Selection selection, Catalog catalog) {
    StringBuilder lines = new StringBuilder("No exercise meets all that.\n");
    for (Map.Entry<String, Integer> without : selection.without(catalog).entrySet()) {
      lines
          .append("Without ")
          .append(without.getKey())
          .append(" there ")
          .append(without.getValue() == 1 ? "is " : "are ")
          .append(without.getValue())
          .append(".\n");
    }
    return lines.toString();
  }
}
