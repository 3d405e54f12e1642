package org.arcwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line as a whole: it only knows its commands. */
@Command(
    name = "arcwright",
    description = {"Composes workshop agendas from a short brief and proves them best.", ""},
    footer = {
      "",
      "Try:  arcwright compose examples/briefs/next-service.yaml",
      "More: arcwright compose --help",
      "",
      "Exit codes: 0 done, 1 nothing fits or findings, 2 wrong input or usage, 3 our fault."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n")
final class Arcwright implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getOut());
    return Exit.DONE;
  }
}
