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

  /** The command with the one below it that is asked for, or with all where their names count. */
  static CommandLine line(Terminal terminal, List<String> words) {
    CommandLine line = new CommandLine(new CatalogCommand(terminal));
    String asked = words.isEmpty() || !COMMANDS.containsKey(words.get(0)) ? "" : words.get(0);
    COMMANDS.forEach(
        (name, command) -> {
          if (asked.isEmpty() || asked.equals(name)) {
            line.addSubcommand(name, command.apply(terminal));
          }
        });
    return line;
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(terminal.out());
    return Exit.DONE;
  }
}
