package org.arcwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.document.StandInsPage;
import org.arcwright.format.StandInsFormat;
import org.arcwright.standin.StandInFinder;
import org.arcwright.standin.StandIns;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What to do when a tool or a person fails. */
@Command(
    name = "standins",
    description = {"Says what to do when a tool or a person fails, exercise by exercise.", ""},
    sortOptions = false)
final class StandInsCommand implements Callable<Integer> {
  @Mixin private AgendaInput input = new AgendaInput();

  @Option(
      names = "--tool",
      paramLabel = "TOOL",
      description = "only this one, for it has failed: board, breakouts, poll ...")
  private Optional<String> tool = Optional.empty();

  @Mixin private FormOption form = new FormOption();

  @Parameters(index = "1..*", hidden = true)
  private List<Path> more = new ArrayList<>();

  @Mixin private CatalogOption catalogs = new CatalogOption();

  private final Terminal terminal;

  StandInsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Catalog catalog = catalogs.read(more, terminal).catalog();
    tool.ifPresent(id -> Wanted.word("tool", id, catalog.tools().keySet()));
    AgendaInput.Read read = input.read(catalog, terminal);
    Brief brief = read.demandBrief();
    StandIns all = read.asking(() -> StandInFinder.of(catalog).find(read.agenda(), brief));
    StandIns asked = tool.map(all::onlyWithout).orElse(all);
    terminal
        .out()
        .print(
            form.isJson()
                ? StandInsFormat.write(asked, brief)
                : StandInsPage.write(asked, catalog, tool, terminal.style(), terminal.width()));
    return Exit.DONE;
  }
}
