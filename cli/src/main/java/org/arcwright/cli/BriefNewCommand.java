package org.arcwright.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.Interview.Wrong;
import org.arcwright.format.BriefFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A new brief, asked for question by question. */
@Command(
    name = "new",
    description = {
      "Asks you about a workshop and writes its brief, with comments that explain each line. A file"
          + " that is there is never written over without asking.",
      ""
    },
    sortOptions = false)
final class BriefNewCommand implements Callable<Integer> {
  @Option(names = "--out", paramLabel = "FILE", description = "where to write; asked if not given")
  private Optional<Path> out = Optional.empty();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  BriefNewCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(List.of(), terminal).catalog();
    Interview interview = new Interview(terminal);
    interview.say(
        "Answer each question; Enter takes what stands in brackets, ? explains. Nothing is written"
            + " before the last one.");
    Optional<Path> named = out.filter(file -> mayWrite(interview, file));
    Brief brief = new BriefQuestions(interview, catalog).ask();
    Path file = named.orElseGet(() -> file(interview, brief.title()));
    WholeFile.to(file).write(Commented.write(brief));
    terminal.out().println("Written to " + file + ". Next: arcwright compose " + file);
    BriefCheckCommand.hints(terminal, BriefFormat.check(file, catalog).hints());
    return Exit.DONE;
  }

  private static Path file(Interview interview, String title) {
    String id = Ids.of(title);
    return interview.ask(
        "File",
        "Where the brief is written; .yaml is usual.",
        (id.isEmpty() ? "brief" : id) + ".yaml",
        answer -> {
          try {
            Path file = Path.of(answer);
            if (mayWrite(interview, file)) {
              return file;
            }
            throw new Wrong("Choose another name then.");
          } catch (InvalidPathException e) {
            throw new Wrong(answer + ": that is no file name here; choose another");
          } catch (Refusal e) {
            throw new Wrong(String.valueOf(e.getMessage()));
          }
        });
  }

  private static boolean mayWrite(Interview interview, Path file) {
    WholeFile.to(file);
    return !Files.exists(file)
        || interview.yes(file + " is there already. Shall it be written over?", "", false);
  }
}
