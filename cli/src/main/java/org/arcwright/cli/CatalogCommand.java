package org.arcwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What trainers do with a catalog; without a further word it says what there is. */
@Command(
    name = "catalog",
    description = {"Keeps a catalog of exercises.", ""},
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n")
final class CatalogCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  private final Terminal terminal;

  private CatalogCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** The command with those below it. */
  static CommandLine line(Terminal terminal) {
    return new CommandLine(new CatalogCommand(terminal))
        .addSubcommand(new CatalogExportCommand(terminal))
        .addSubcommand(new CatalogImportCommand(terminal));
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(terminal.out());
    return Exit.DONE;
  }
}
