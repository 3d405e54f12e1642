package org.arcwright.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.arcwright.cli.document.Style;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Runs one command of the command line. */
public final class Main {
  private static final Map<String, Function<Terminal, Object>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("compose", ComposeCommand::new);
    COMMANDS.put("solve", SolveCommand::new);
    COMMANDS.put("check", CheckCommand::new);
  }

  private Main() {}

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    Terminal terminal = Terminal.system();
    int code = run(terminal, args);
    System.exit(terminal.out().checkError() ? Math.max(code, Exit.WRONG_INPUT) : code);
  }

  /** Runs the command and returns its exit code, one of {@link Exit}. */
  public static int run(Terminal terminal, String... args) {
    Faults faults = new Faults(terminal);
    try {
      return line(terminal, args)
          .setParameterExceptionHandler(faults)
          .setExecutionExceptionHandler(faults)
          .execute(args);
    } catch (OutOfMemoryError e) {
      return faults.outOfMemory();
    } finally {
      terminal.out().flush();
    }
  }

  /** Only the command that is asked for is built; all of them where help needs their names. */
  private static CommandLine line(Terminal terminal, String... args) {
    CommandLine line = new CommandLine(new Arcwright());
    String asked = args.length > 0 && COMMANDS.containsKey(args[0]) ? args[0] : "";
    COMMANDS.forEach(
        (name, command) -> {
          if (asked.isEmpty() || asked.equals(name)) {
            line.addSubcommand(name, command.apply(terminal));
          }
        });
    return line.setOut(new PrintWriter(terminal.out(), true))
        .setErr(new PrintWriter(terminal.err(), true))
        .setUsageHelpWidth(Math.min(terminal.width(), Terminal.PAGE))
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(
                terminal.style() == Style.ANSI ? Ansi.ON : Ansi.OFF));
  }
}
