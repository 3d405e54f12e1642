package org.arcwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
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
  private static final Map<String, Function<Terminal, Object>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("list", CatalogListCommand::new);
    COMMANDS.put("show", CatalogShowCommand::new);
    COMMANDS.put("similar", CatalogSimilarCommand::new);
    COMMANDS.put("compare", CatalogCompareCommand::new);
    COMMANDS.put("check", CatalogCheckCommand::new);
    COMMANDS.put("gaps", CatalogGapsCommand::new);
    COMMANDS.put("new", CatalogNewCommand::new);
    COMMANDS.put("export", CatalogExportCommand::new);
    COMMANDS.put("import", CatalogImportCommand::new);
  }

  @Spec private CommandSpec spec = CommandSpec.create();

  private final Terminal terminal;

  private CatalogCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  static CommandLine line(Terminal terminal, List<String> words) {
    return Subcommands.line(new CatalogCommand(terminal), COMMANDS, terminal, words);
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(terminal.out());
    return Exit.DONE;
  }
}
