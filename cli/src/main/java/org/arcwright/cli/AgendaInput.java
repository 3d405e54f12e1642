package org.arcwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.format.AgendaFile;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.BriefFormat;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** An agenda and the brief it is for: the one that its file carries, or another one named. */
final class AgendaInput {
  private static final Pattern BRIEF_FILE = Pattern.compile("\\.ya?ml$");

  @Parameters(
      index = "0",
      paramLabel = "AGENDA",
      description = "the agenda, in JSON as compose --format json writes it")
  private Path agendaFile = Path.of("");

  @Option(
      names = "--brief",
      paramLabel = "BRIEF",
      description = "its brief, if it is another one than the agenda was composed for")
  private Optional<Path> briefFile = Optional.empty();

  /**
   * What was read.
   *
   * @param brief if there is one
   * @param input where it comes from
   */
  record Read(Agenda agenda, Optional<Brief> brief, AgendaInput input) {
    /** The brief, which is refused to be missing. */
    Brief demandBrief() {
      return brief.orElseThrow(
          () ->
              new Refusal(
                  input.agendaFile
                      + ": this agenda does not say what it was composed for; name its brief with"
                      + " --brief"));
    }

    /** Does something with the brief, and says in which file it is when it does not suit. */
    <T> T asking(Supplier<T> work) {
      try {
        return work.get();
      } catch (InvalidValueException e) {
        throw new Refusal(input.briefName() + ": " + e.getMessage(), e);
      }
    }
  }

  /** Reads both; what they name must be the catalog's. Notes where they are of two workshops. */
  Read read(Catalog catalog, Terminal terminal) {
    if (BRIEF_FILE.matcher(agendaFile.toString()).find() && Files.exists(agendaFile)) {
      throw new Refusal(
          agendaFile
              + ": an agenda is wanted, in JSON, and this looks like a brief; compose "
              + agendaFile
              + " --out agenda.json writes one");
    }
    AgendaFile file =
        briefFile.isPresent()
            ? new AgendaFile(
                AgendaFormat.read(agendaFile),
                Optional.of(BriefFormat.read(briefFile.get(), catalog)))
            : AgendaFormat.read(agendaFile, catalog);
    file.brief().ifPresent(brief -> noteDifferences(file.agenda(), brief, terminal));
    return new Read(file.agenda(), file.brief(), this);
  }

  private static void noteDifferences(Agenda agenda, Brief brief, Terminal terminal) {
    note("goal", agenda.goal(), brief.goal(), terminal);
    note("mode", agenda.mode().word(), brief.mode().word(), terminal);
    note("number of people", agenda.people(), brief.group().count(), terminal);
  }

  private static void note(String what, Object inAgenda, Object inBrief, Terminal terminal) {
    if (!inAgenda.equals(inBrief)) {
      terminal
          .err()
          .println(
              "The " + what + " in the agenda is " + inAgenda + ", in the brief " + inBrief + ".");
    }
  }

  /** The file that was named with --brief. */
  Optional<Path> briefFile() {
    return briefFile;
  }

  /** The file in which the brief stands. */
  String briefName() {
    return briefFile.orElse(agendaFile).toString();
  }

  /** Where a log of the day goes if nothing else is said: {@code agenda.jsonl} for agenda.json. */
  Path logBeside(boolean rehearsal) {
    String name = String.valueOf(agendaFile.getFileName());
    int dot = name.lastIndexOf('.');
    return agendaFile.resolveSibling(
        (dot > 0 ? name.substring(0, dot) : name)
            + (rehearsal ? ".rehearsal" : "")
            + LearnCommand.LOG_FILE);
  }

  /** Whether a file to be written is one of those that are read. */
  boolean holds(WholeFile file) {
    return file.is(agendaFile) || briefFile.filter(file::is).isPresent();
  }
}
