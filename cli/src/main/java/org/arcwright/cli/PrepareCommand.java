package org.arcwright.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.handout.Bundle;
import org.arcwright.cli.handout.Workshop;
import org.arcwright.standin.StandInFinder;
import org.arcwright.standin.StandIns;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** From an agenda to everything a facilitator hands out before the day. */
@Command(
    name = "prepare",
    description = {"Writes what a facilitator hands out or keeps at hand, into one folder.", ""},
    sortOptions = false)
final class PrepareCommand implements Callable<Integer> {
  private static final InstantSource CLOCK = InstantSource.system();

  @Mixin private AgendaInput input = new AgendaInput();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "the folder to write; one that was written so before is replaced")
  private Path out = Path.of("");

  @Option(
      names = "--each-item",
      description = "the calendar has an event for each exercise beside the workshop's own")
  private boolean eachItem;

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      converter = Zone.class,
      description =
          "where some of the people are, such as Asia/Kolkata, beside the brief's zones: their"
              + " agenda has its times too; may be given several times")
  private List<ZoneId> zones = new ArrayList<>();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  @Mixin private PageOptions pages = new PageOptions();

  private final Terminal terminal;

  PrepareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    WholeFolder folder = WholeFolder.to(out);
    Catalog catalog = catalogs.read(more, terminal).catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Workshop workshop = new Workshop(read.agenda(), read.demandBrief(), catalog, pages.language());
    Instant now = CLOCK.instant();
    Set<ZoneId> all = new LinkedHashSet<>(workshop.brief().zones());
    all.addAll(zones);
    workshop.agenda().start().ifPresent(start -> all.remove(start.getZone()));
    StandIns standIns =
        read.asking(() -> StandInFinder.of(catalog).find(workshop.agenda(), workshop.brief()));
    Map<String, String> files =
        pages.writing(
            writer ->
                Bundle.of(
                    workshop, standIns, writer, List.copyOf(all), eachItem, now, folder::earlier));
    WholeFolder.sayKept(folder.write(files), terminal);
    if (!files.containsKey(Bundle.CALENDAR)) {
      terminal.err().println("No calendar: the brief names no start and zone.");
    }
    terminal.err().println("Written to " + out + "; begin with " + out.resolve("index.html") + ".");
    return Exit.DONE;
  }

  /** Reads the name of a time zone. */
  static final class Zone implements ITypeConverter<ZoneId> {
    @Override
    public ZoneId convert(String name) {
      try {
        return ZoneId.of(name);
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "\""
                + name
                + "\" is no time zone; continent and city, such as Asia/Kolkata, are right");
      }
    }
  }
}
