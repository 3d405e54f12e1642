package org.arcwright.cli;

import java.io.PrintStream;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.catalog.Nearest;
import org.arcwright.format.FormatException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what went wrong, in one clear message, and which exit code that is. */
final class Faults implements IParameterExceptionHandler, IExecutionExceptionHandler {
  /** A stack trace is shown only to those who ask for it. */
  static final String TRACE = "--trace";

  private final PrintStream err;

  Faults(Terminal terminal) {
    this.err = terminal.err();
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    String name = line.getCommandSpec().qualifiedName();
    err.println(name + ": " + message(e, line.getCommandSpec()));
    err.println("See: " + name + " --help");
    return Exit.WRONG_INPUT;
  }

  private static String message(ParameterException e, CommandSpec spec) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      Set<String> known = new TreeSet<>(spec.optionsMap().keySet());
      known.addAll(spec.subcommands().keySet());
      return "\""
          + word
          + "\" is unknown here"
          + Nearest.to(word, known).map(near -> "; perhaps " + near).orElse("");
    }
    return String.valueOf(e.getMessage());
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
    if (parsed.hasMatchedOption(TRACE)) {
      e.printStackTrace(err);
    }
    if (e instanceof Refusal || e instanceof FormatException) {
      err.println(e.getMessage());
      return Exit.WRONG_INPUT;
    }
    return ours(e);
  }

  int ours(Throwable e) {
    err.println(
        "Something went wrong inside Arcwright; your input is not to blame ("
            + e
            + "). Please report it with what "
            + TRACE
            + " prints.");
    return Exit.OUR_FAULT;
  }

  int outOfMemory() {
    err.println(
        "Arcwright ran out of memory; give it more, such as java -Xmx4g -jar arcwright.jar ...");
    return Exit.OUR_FAULT;
  }
}
