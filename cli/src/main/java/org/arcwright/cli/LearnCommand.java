package org.arcwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.cli.document.LearnPage;
import org.arcwright.format.LessonsFormat;
import org.arcwright.format.LogFormat;
import org.arcwright.learn.Learner;
import org.arcwright.learn.Lesson;
import org.arcwright.learn.Lessons;
import org.arcwright.learn.Pace;
import org.arcwright.live.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From logs of past days to how long exercises really take. */
@Command(
    name = "learn",
    description = {"Learns from the logs of past days how long exercises really take.", ""},
    footer = {
      "",
      "What it writes is a catalog folder: give it to compose and forecast with --catalog.",
      "Exit code 1 if what was learnt predicts these very logs no better than the catalog does."
    },
    sortOptions = false)
final class LearnCommand implements Callable<Integer> {
  /** How the names of logs end. */
  static final String LOG_FILE = ".jsonl";

  @Parameters(
      index = "0..*",
      arity = "1..*",
      paramLabel = "LOGS",
      description = "logs, or folders with logs, whose names end in .jsonl")
  private List<Path> logs = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "the catalog folder to write into; without it, nothing is written")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--replace", description = "write over files that are there already")
  private boolean replace;

  @Mixin private FormOption form = new FormOption();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  LearnCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(List.of(), terminal).catalog();
    List<Progress> days = days();
    Lessons lessons = Learner.learn(catalog, days);
    List<Exercise> learnt =
        lessons.lessons().stream()
            .filter(Lesson::learnt)
            .flatMap(
                lesson ->
                    catalog
                        .exercise(lesson.exercise())
                        .map(exercise -> Pace.at(exercise, lesson.factor()))
                        .filter(exercise -> !catalog.exercises().containsValue(exercise))
                        .stream())
            .toList();
    terminal
        .out()
        .print(
            form.isJson()
                ? LessonsFormat.write(lessons)
                : LearnPage.write(lessons, catalog, terminal.style(), terminal.width()));
    if (!lessons.better()) {
      out.ifPresent(folder -> terminal.err().println("Nothing written to " + folder + "."));
      return Exit.NEGATIVE;
    }
    if (out.isPresent()) {
      CatalogFolder folder = new CatalogFolder(out.get());
      folder.addExercises(learnt);
      folder.write(replace);
      terminal.err().println("Written to " + out.get() + ".");
    }
    return Exit.DONE;
  }

  /** The logs of days with a group; who rehearses takes other times than a group does. */
  private List<Progress> days() {
    List<Progress> days = new ArrayList<>();
    List<Path> files = files();
    for (Path file : files) {
      Progress day = read(file);
      if (day.workshop().rehearsal()) {
        terminal.err().println(file + ": a rehearsal, left out.");
      } else {
        days.add(day);
      }
    }
    if (days.isEmpty()) {
      throw new Refusal(
          "nothing to learn from: "
              + (files.size() == 1 ? "that is a rehearsal" : "all of these are rehearsals")
              + "; give logs of days with a group");
    }
    return days;
  }

  private List<Path> files() {
    List<Path> files = new ArrayList<>();
    for (Path path : logs) {
      if (!Files.isDirectory(path)) {
        files.add(path);
        continue;
      }
      try (Stream<Path> inside = Files.list(path)) {
        List<Path> found =
            inside
                .filter(file -> String.valueOf(file.getFileName()).endsWith(LOG_FILE))
                .sorted()
                .toList();
        if (found.isEmpty()) {
          throw new Refusal(path + ": it holds no log; their names end in " + LOG_FILE);
        }
        files.addAll(found);
      } catch (IOException e) {
        throw new Refusal(path + ": it cannot be read; check its permissions", e);
      }
    }
    return files.stream().distinct().toList();
  }

  private Progress read(Path file) {
    LogFormat.Reading reading = LogFormat.read(file);
    reading.torn().forEach(problem -> terminal.err().println(problem.text()));
    return reading.progress();
  }
}
