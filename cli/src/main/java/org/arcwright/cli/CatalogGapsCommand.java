package org.arcwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.document.GapsPage;
import org.arcwright.cli.document.GapsPicture;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;
import org.arcwright.compose.Cancel;
import org.arcwright.format.GapsFormat;
import org.arcwright.gaps.GapSearch;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.Grid;
import org.arcwright.gaps.ToolSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Where the shelf is thin. */
@Command(
    name = "gaps",
    description = {
      "Finds where the shelf is thin: composes for every goal, group, place, length and set of tools,"
          + " counts how many different agendas there are, and says which exercise would add one.",
      ""
    },
    footer = {
      "",
      "Exit code 1 if some brief has no agenda at all, 0 if each has one.",
      "",
      "Try:  arcwright catalog gaps --mode remote --people 12..30 --out gaps.svg"
    },
    sortOptions = false)
final class CatalogGapsCommand implements Callable<Integer> {
  private static final int HALF_HOUR = 30;

  @Option(
      names = "--goal",
      paramLabel = "GOAL",
      split = ",",
      description = "only for this goal; several with commas")
  private List<String> goals = new ArrayList<>();

  @Option(
      names = "--mode",
      paramLabel = "MODE",
      split = ",",
      converter = WordConverter.Modes.class,
      description = "only there: remote, in-person or hybrid; several with commas")
  private List<Mode> modes = new ArrayList<>();

  @Option(
      names = "--people",
      paramLabel = "N",
      split = ",",
      converter = Between.Converter.class,
      description = "these numbers of people: 8,12 or 4..30; ten from 4 to 30 if not given")
  private List<Between> people = new ArrayList<>();

  @Option(
      names = "--minutes",
      paramLabel = "N",
      split = ",",
      converter = Between.Converter.class,
      description = "these lengths: 60,90 or 60..240 in half hours; 60,90,120,180,240 if not given")
  private List<Between> minutes = new ArrayList<>();

  @Option(
      names = "--tools",
      paramLabel = "TOOLS",
      split = ",",
      description =
          "usual, barest, or the very tools, such as call+chat; usual,barest if not given")
  private List<String> tools = new ArrayList<>();

  @Option(
      names = "--most",
      paramLabel = "N",
      description = "how many different agendas to count up to; 3 if not given")
  private int most = 3;

  @Option(
      names = "--list",
      paramLabel = "N",
      description = "how many thin places to look into, the thinnest first; 100 if not given")
  private int list = 100;

  @Mixin private PictureOption output = new PictureOption();

  @Option(names = "--progress", description = "say how far it is even where nobody seems to watch")
  private boolean progress;

  @Parameters(index = "0..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  CatalogGapsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (most < 1 || most > 9) {
      throw new Refusal("--most " + most + ": from 1 to 9 is right");
    }
    if (list < 0) {
      throw new Refusal("--list " + list + ": 0 or more is right");
    }
    Optional<WholeFile> file = output.file();
    Catalog catalog = catalogs.read(more, terminal).catalog();
    Gaps gaps = search(catalog, grid(catalog));
    Delivery.of(
        terminal, file, (marks, style, width) -> document(gaps, catalog, marks, style, width));
    return gaps.having(0) > 0 ? Exit.NEGATIVE : Exit.DONE;
  }

  private Gaps search(Catalog catalog, Grid grid) {
    AtomicReference<String> stand = new AtomicReference<>("Starting");
    return Progress.during(
        terminal.err(),
        progress || terminal.progress(),
        stand::get,
        () ->
            GapSearch.run(
                catalog,
                grid,
                most,
                list,
                (stage, done, of) -> stand.set(said(stage) + ": " + done + " of " + of),
                Cancel.NEVER));
  }

  private static String said(GapSearch.Stage stage) {
    return switch (stage) {
      case COUNT -> "Composing for every brief";
      case FILL -> "Looking into thin places";
    };
  }

  private String document(Gaps gaps, Catalog catalog, Marks marks, Style style, int width) {
    return switch (output.form()) {
      case TEXT -> GapsPage.write(gaps, catalog, marks, style, width);
      case JSON -> GapsFormat.write(gaps);
      case SVG -> GapsPicture.write(gaps, catalog);
    };
  }

  private Grid grid(Catalog catalog) {
    if (catalog.goals().isEmpty()) {
      throw new Refusal("the catalog has no goal, so there is nothing to compose for");
    }
    try {
      Grid grid = Grid.usual(catalog);
      if (!goals.isEmpty()) {
        goals.forEach(goal -> Wanted.word("goal", goal, catalog.goals().keySet()));
        grid = grid.withGoals(List.copyOf(new LinkedHashSet<>(goals)));
      }
      if (!people.isEmpty()) {
        grid = grid.withPeople(numbers("--people", people, 1, 1, 1000));
      }
      if (!minutes.isEmpty()) {
        grid =
            grid.withLengths(
                numbers("--minutes", minutes, HALF_HOUR, 15, 2400).stream()
                    .map(Duration::ofMinutes)
                    .toList());
      }
      return grid.withTools(toolSets(catalog));
    } catch (InvalidValueException e) {
      throw new Refusal("gaps: " + e.getMessage(), e);
    }
  }

  private static List<Integer> numbers(
      String option, List<Between> ranges, int step, int least, int most) {
    Set<Integer> numbers = new LinkedHashSet<>();
    for (Between range : ranges) {
      if (range.least() < least || range.most() > most) {
        throw new Refusal(option + " " + range + ": from " + least + " to " + most + " is right");
      }
      for (int number = range.least(); number <= range.most(); number += step) {
        numbers.add(number);
      }
    }
    return numbers.stream().sorted().toList();
  }

  private List<ToolSet> toolSets(Catalog catalog) {
    Set<Mode> places = modes.isEmpty() ? EnumSet.allOf(Mode.class) : EnumSet.copyOf(modes);
    List<ToolSet> sets = new ArrayList<>();
    for (String word : tools.isEmpty() ? List.of("usual", "barest") : tools) {
      for (Mode mode : places) {
        switch (word) {
          case "usual" -> sets.add(ToolSet.usual(mode));
          case "barest" -> ToolSet.barest(mode, catalog).ifPresent(sets::add);
          default -> sets.add(new ToolSet(mode, word, these(word, catalog)));
        }
      }
    }
    return sets.stream().distinct().toList();
  }

  private static Set<String> these(String word, Catalog catalog) {
    Set<String> ids = new LinkedHashSet<>(Arrays.asList(word.split("\\+", -1)));
    ids.forEach(id -> Wanted.word("tool", id, catalog.tools().keySet()));
    return ids;
  }
}
