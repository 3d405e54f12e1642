package org.arcwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.handout.Account;
import org.arcwright.cli.handout.AfterBundle;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.LogFormat;
import org.arcwright.format.RecordFormat;
import org.arcwright.record.WorkshopRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From what happened on the day to everything a facilitator hands out after it. */
@Command(
    name = "report",
    description = {
      "Writes the report of a workshop, the handover call's agenda and the follow-ups.",
      ""
    },
    sortOptions = false)
final class ReportCommand implements Callable<Integer> {
  private static final InstantSource CLOCK = InstantSource.system();

  @Parameters(
      index = "0",
      paramLabel = "RECORD",
      description = "what happened: a record in YAML, or the day's log, as live writes it")
  private Path recordFile = Path.of("");

  @Option(
      names = "--agenda",
      paramLabel = "AGENDA",
      description = "the agenda that the day was to follow, to show the one beside the other")
  private Optional<Path> agendaFile = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "the folder to write; one that was written so before is replaced")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--draft",
      paramLabel = "FILE",
      description =
          "instead of a report the record in YAML, to add by hand what a log does not know, such as"
              + " how decisions were reached and who does what")
  private Optional<Path> draft = Optional.empty();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  @Mixin private PageOptions pages = new PageOptions();

  private final Terminal terminal;

  ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (out.isPresent() == draft.isPresent()) {
      throw new Refusal(
          "arcwright report: name a folder for the report with --out, or a file for a record to"
              + " complete with --draft");
    }
    Catalog catalog = catalogs.read(more, terminal).catalog();
    if (draft.isPresent()) {
      draft(WholeFile.to(draft.get()));
    } else {
      report(out.orElseThrow(), catalog);
    }
    return Exit.DONE;
  }

  private WorkshopRecord record() {
    if (!isLog(recordFile)) {
      return RecordFormat.read(recordFile);
    }
    LogFormat.Reading log = LogFormat.read(recordFile);
    log.torn().forEach(problem -> terminal.err().println(problem));
    return WorkshopRecord.of(log.progress());
  }

  /** A log of any name is told from a record by how it begins. */
  private static boolean isLog(Path file) {
    if (file.toString().endsWith(".jsonl")) {
      return true;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.read() == '{';
    } catch (IOException e) {
      return false;
    }
  }

  private void draft(WholeFile file) {
    if (file.is(recordFile)) {
      throw new Refusal(file.path() + ": this is what is read; give the draft another name");
    }
    file.write(RecordFormat.write(record()));
    terminal.err().println("Written to " + file.path() + "; complete it, then ask for the report.");
  }

  private void report(Path to, Catalog catalog) {
    WholeFolder folder = WholeFolder.to(to);
    Optional<Agenda> agenda = agendaFile.map(AgendaFormat::read);
    Account account = Account.of(record(), agenda, catalog, pages.language());
    Instant now = CLOCK.instant();
    Map<String, String> files =
        pages.writing(
            writer -> AfterBundle.of(account, writer, now, folder.earlier(AfterBundle.CALENDAR)));
    WholeFolder.sayKept(folder.write(files), terminal);
    if (!files.containsKey(AfterBundle.CALENDAR)) {
      terminal.err().println("No calendar: the record names no start and no day to follow up.");
    }
    terminal.err().println("Written to " + to + "; begin with " + to.resolve("report.html") + ".");
  }
}
