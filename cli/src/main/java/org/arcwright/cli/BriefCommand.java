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

/** What can be done with a brief before an agenda is composed. */
@Command(
    name = "brief",
    description = {"Writes and checks briefs.", ""},
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n")
final class BriefCommand implements Callable<Integer> {
  private static final Map<String, Function<Terminal, Object>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("new", BriefNewCommand::new);
    COMMANDS.put("check", BriefCheckCommand::new);
  }

  @Spec private CommandSpec spec = CommandSpec.create();

  private final Terminal terminal;

  private BriefCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  static CommandLine line(Terminal terminal, List<String> words) {
    return Subcommands.line(new BriefCommand(terminal), COMMANDS, terminal, words);
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(terminal.out());
    return Exit.DONE;
  }
}
