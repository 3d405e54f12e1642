package org.arcwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.search.Limit;
import org.arcwright.format.LogFile;
import org.arcwright.live.Day;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Replanner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs a day in the terminal: what now, what next, how time stands, and one key for each move. */
@Command(
    name = "live",
    description = {
      "Runs the day: shows what now, what next and how time stands, takes notes, and finds ways to"
          + " go on. Every move is written down at once, so nothing is lost whatever happens; the"
          + " same command goes on where it was left.",
      ""
    },
    sortOptions = false)
final class LiveCommand implements Callable<Integer> {
  /** An agenda for a time further off than this is being rehearsed, and begins now. */
  private static final Duration SAME_DAY = Duration.ofHours(12);

  private static final Limit PATIENCE = Limit.labels(2_000_000);
  private static final long SECOND = 1000;

  @Mixin private AgendaInput input = new AgendaInput();

  @Option(
      names = "--log",
      paramLabel = "LOG",
      description =
          "where moves are written down; without it, beside the agenda, as AGENDA.jsonl, or"
              + " AGENDA.rehearsal.jsonl")
  private Optional<Path> log = Optional.empty();

  @Option(
      names = "--rehearsal",
      description =
          "this is a try-out without the group: learn leaves its log out; an agenda for another day"
              + " is taken to be one")
  private boolean rehearsal;

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;
  private final InstantSource clock;

  LiveCommand(Terminal terminal, InstantSource clock) {
    this.terminal = terminal;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(more, terminal).catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Brief brief = read.demandBrief();
    Progress.Workshop workshop = workshop(read.agenda(), now(), rehearsal);
    Path file = log.orElseGet(() -> input.logBeside(workshop.rehearsal()));
    boolean rehearsed;
    try (LiveConsole console = LiveConsole.open();
        LogFile book = LogFile.open(file, workshop)) {
      Day day = DayLog.day(read.agenda(), file, book.progress());
      Replanner replanner = Replanner.of(catalog);
      LiveDesk desk =
          new LiveDesk(
              day,
              brief,
              catalog,
              (plan, stand) -> replanner.replan(brief, plan, stand, Set.of(), PATIENCE));
      rehearsed = book.progress().workshop().rehearsal();
      if (!book.torn().isEmpty()) {
        desk.say("A line of the log was never finished and is passed over.");
      }
      run(desk, book, console);
    } catch (IOException e) {
      throw new Refusal(file + ": the log cannot be kept: " + cause(e), e);
    }
    terminal
        .err()
        .println(
            "Written down in "
                + file
                + (rehearsed ? ", as a rehearsal, which learn leaves out." : "."));
    return Exit.DONE;
  }

  private static String cause(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such folder; make it first, or name another with --log";
    }
    if (e instanceof AccessDeniedException) {
      return "it may not be written to; check its permissions, or name another with --log";
    }
    return e instanceof FileSystemException system
        ? Optional.ofNullable(system.getReason()).orElse(String.valueOf(e.getMessage()))
        : String.valueOf(e.getMessage());
  }

  private void run(LiveDesk desk, LogFile book, LiveConsole console) throws IOException {
    while (!desk.isLeft()) {
      console.draw(
          desk.screen(
              moment(), terminal.marks(), terminal.style(), console.width(), console.height()),
          desk.isWriting());
      int key = console.key(SECOND);
      if (key == LiveConsole.OVER) {
        return;
      }
      if (key != LiveConsole.NONE) {
        for (LogEntry entry : desk.press(key, moment())) {
          book.append(entry);
        }
        desk.goOn(book.progress());
      }
    }
  }

  private OffsetDateTime moment() {
    return now().toOffsetDateTime();
  }

  private ZonedDateTime now() {
    return clock.instant().atZone(ZoneId.systemDefault());
  }

  /** What the log's first line says; the day starts when planned, or now if that is another day. */
  static Progress.Workshop workshop(Agenda agenda, ZonedDateTime now, boolean rehearsal) {
    Optional<ZonedDateTime> today =
        agenda.start().filter(time -> Duration.between(time, now).abs().compareTo(SAME_DAY) < 0);
    ZonedDateTime start = today.orElseGet(() -> now.truncatedTo(ChronoUnit.MINUTES));
    Progress.Workshop workshop =
        new Progress.Workshop(agenda.title(), agenda.mode(), agenda.people(), Optional.of(start));
    boolean another = agenda.start().isPresent() && today.isEmpty();
    return rehearsal || another ? workshop.rehearsed() : workshop;
  }
}
