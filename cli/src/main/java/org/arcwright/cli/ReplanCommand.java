package org.arcwright.cli;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.document.ReplanDocument;
import org.arcwright.compose.search.Limit;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.ReplanFormat;
import org.arcwright.live.Replan;
import org.arcwright.live.Replanner;
import org.arcwright.live.Way;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From a day that runs late, or early, to ways to go on. */
@Command(
    name = "replan",
    description = {
      "Says how to go on with a day that runs late or early, or has to end at another time: up to"
          + " three ways, the one to take first.",
      ""
    },
    sortOptions = false)
final class ReplanCommand implements Callable<Integer> {
  /**
   * So many steps in each search are a second or so; days that people sit through need far less.
   */
  private static final Limit PATIENCE = Limit.labels(2_000_000);

  @Mixin private AgendaInput input = new AgendaInput();
  @Mixin private StandOption stands = new StandOption();

  @Option(
      names = "--may-move",
      paramLabel = "ID",
      description =
          "something tied to a time that may start at another; may be given several times")
  private Set<String> movable = new TreeSet<>();

  @Option(
      names = "--take",
      paramLabel = "N",
      description = "take way 1, 2 or 3, and write the agenda that follows to --out")
  private Optional<Integer> take = Optional.empty();

  @Mixin private FormOption form = new FormOption();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write to this file instead of standard output")
  private Optional<Path> out = Optional.empty();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;
  private final InstantSource clock;

  ReplanCommand(Terminal terminal, InstantSource clock) {
    this.terminal = terminal;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    Optional<WholeFile> outFile = out.map(WholeFile::to);
    if (take.isPresent() && outFile.isEmpty()) {
      throw new Refusal("--take writes an agenda; say where with --out, such as --out today.json");
    }
    if (outFile.filter(input::holds).isPresent()) {
      throw new Refusal(outFile.get().path() + ": that is read here; name another file");
    }
    Catalog catalog = catalogs.read(more, terminal).catalog();
    AgendaInput.Read read = input.read(catalog, terminal);
    Brief brief = read.demandBrief();
    StandOption.Told told = stands.of(read.agenda(), clock);
    Replan replan =
        read.asking(
            () ->
                Replanner.of(catalog).replan(brief, told.plan(), told.stand(), movable, PATIENCE));
    ReplanDocument document = new ReplanDocument(replan, told.plan(), brief, catalog);
    if (take.isPresent()) {
      Way way = taken(replan);
      outFile.orElseThrow().write(AgendaFormat.write(way.agenda(), brief));
      terminal.out().print(document.taken(way, terminal.style(), terminal.width()));
      terminal.err().println("Written to " + outFile.get().path() + ".");
    } else {
      Delivery.of(
          terminal,
          outFile,
          (marks, style, width) ->
              form.isJson()
                  ? ReplanFormat.write(replan, brief)
                  : document.text(marks, style, width));
    }
    if (stands.isAssumed()) {
      terminal
          .err()
          .println(
              "The day is taken to have gone as planned so far; say what runs now with --upto, and"
                  + " since when with --since.");
    }
    return replan.followUp().isPresent() ? Exit.NEGATIVE : Exit.DONE;
  }

  private Way taken(Replan replan) {
    int number = take.orElseThrow();
    if (number < 1 || number > replan.ways().size()) {
      throw new Refusal(
          "--take "
              + number
              + ": there "
              + (replan.ways().size() == 1 ? "is 1 way" : "are " + replan.ways().size() + " ways"));
    }
    return replan.ways().get(number - 1);
  }
}
