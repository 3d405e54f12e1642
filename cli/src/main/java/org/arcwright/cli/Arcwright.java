package org.arcwright.cli;

import picocli.CommandLine.Command;

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
final class Arcwright {}
