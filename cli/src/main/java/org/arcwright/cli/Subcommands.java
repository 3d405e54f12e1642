package org.arcwright.cli;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;

/** Commands below a command. */
final class Subcommands {
  private Subcommands() {}

  /** The command with the one below it that is asked for, or with all where their names count. */
  static CommandLine line(
      Object command,
      Map<String, Function<Terminal, Object>> below,
      Terminal terminal,
      List<String> words) {
    CommandLine line = new CommandLine(command);
    String asked = words.isEmpty() || !below.containsKey(words.get(0)) ? "" : words.get(0);
    below.forEach(
        (name, made) -> {
          if (asked.isEmpty() || asked.equals(name)) {
            line.addSubcommand(name, made.apply(terminal));
          }
        });
    return line;
  }
}
