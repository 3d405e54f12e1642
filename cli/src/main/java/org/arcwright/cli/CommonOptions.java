package org.arcwright.cli;

import picocli.CommandLine.Option;

/** What every command understands. */
final class CommonOptions {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "show this help")
  private boolean help;

  @Option(names = Faults.TRACE, description = "with a stack trace if something goes wrong")
  private boolean trace;
}
