package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.arcwright.cli.document.Style;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.OptionSpec;

/** Runs one command of the command line. */
public final class Main {
  private static final Map<String, BiFunction<Terminal, List<String>, Object>> COMMANDS =
      new LinkedHashMap<>();

  static {
    COMMANDS.put("compose", (terminal, words) -> new ComposeCommand(terminal));
    COMMANDS.put("solve", (terminal, words) -> new SolveCommand(terminal));
    COMMANDS.put("check", (terminal, words) -> new CheckCommand(terminal));
    COMMANDS.put("why-not", (terminal, words) -> new WhyNotCommand(terminal));
    COMMANDS.put("forecast", (terminal, words) -> new ForecastCommand(terminal));
    COMMANDS.put("standins", (terminal, words) -> new StandInsCommand(terminal));
    COMMANDS.put("learn", (terminal, words) -> new LearnCommand(terminal));
    COMMANDS.put("brief", BriefCommand::line);
    COMMANDS.put("prepare", (terminal, words) -> new PrepareCommand(terminal));
    COMMANDS.put("report", (terminal, words) -> new ReportCommand(terminal));
    COMMANDS.put(
        "replan", (terminal, words) -> new ReplanCommand(terminal, InstantSource.system()));
    COMMANDS.put("live", (terminal, words) -> new LiveCommand(terminal, InstantSource.system()));
    COMMANDS.put("catalog", CatalogCommand::line);
    COMMANDS.put("schema", (terminal, words) -> new SchemaCommand(terminal));
  }

  /** What a command line without a word stands for. */
  private static final String[] HELP = {"--help"};

  private Main() {}

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    Terminal terminal = Terminal.system();
    int code = run(terminal, args);
    if (terminal.out().checkError()) {
      terminal.err().println("Not all of it could be written to standard output.");
      code = Math.max(code, Exit.WRONG_INPUT);
    }
    System.exit(code);
  }

  /** Runs the command and returns its exit code, one of {@link Exit}. */
  public static int run(Terminal terminal, String... args) {
    Faults faults = new Faults(terminal);
    try {
      return line(terminal, args)
          .setParameterExceptionHandler(faults)
          .setExecutionExceptionHandler(faults)
          .execute(args.length == 0 ? HELP : args);
    } catch (OutOfMemoryError e) {
      return faults.outOfMemory();
    } catch (StackOverflowError | LinkageError e) {
      return faults.ours(e);
    } finally {
      terminal.out().flush();
    }
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, UTF_8), true);
  }

  private static void addCommonOptions(CommandLine command) {
    command
        .getCommandSpec()
        .addOption(
            OptionSpec.builder(Faults.TRACE)
                .description("with a stack trace if something goes wrong")
                .build())
        .addOption(
            OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("show this help")
                .build());
    command.getSubcommands().values().forEach(Main::addCommonOptions);
  }

  /** Only the command that is asked for is built; all of them where help needs their names. */
  private static CommandLine line(Terminal terminal, String... args) {
    CommandLine line = new CommandLine(new Arcwright());
    String asked = args.length > 0 && COMMANDS.containsKey(args[0]) ? args[0] : "";
    List<String> words = Arrays.stream(args).skip(1).toList();
    COMMANDS.forEach(
        (name, command) -> {
          if (asked.isEmpty() || asked.equals(name)) {
            line.addSubcommand(name, command.apply(terminal, words));
          }
        });
    line.getSubcommands().values().forEach(Main::addCommonOptions);
    line.registerConverter(Path.class, new Paths());
    line.registerConverter(Integer.class, new WholeNumbers());
    line.registerConverter(int.class, new WholeNumbers());
    return line.setOut(writer(terminal.out()))
        .setErr(writer(terminal.err()))
        .setUsageHelpWidth(Math.min(terminal.width(), Terminal.PAGE))
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(
                terminal.style() == Style.ANSI ? Ansi.ON : Ansi.OFF));
  }
}
