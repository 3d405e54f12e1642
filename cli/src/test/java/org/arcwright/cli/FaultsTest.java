package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.OptionSpec;

/** Our own faults are called so, with a stack trace only for those who ask. */
class FaultsTest {
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Command(name = "broken")
  private static final class Broken implements Callable<Integer> {
    @Override
    public Integer call() {
      throw new IllegalStateException("a wheel came off");
    }
  }

  private int run(String... args) {
    PrintStream stream = new PrintStream(err, true, UTF_8);
    Terminal terminal = new Terminal(stream, stream, Marks.ASCII, Style.PLAIN, 80, false);
    CommandLine line = new CommandLine(new Broken());
    line.getCommandSpec().addOption(OptionSpec.builder(Faults.TRACE).build());
    return line.setExecutionExceptionHandler(new Faults(terminal)).execute(args);
  }

  @Test
  void an_unforeseen_error_is_our_fault() {
    assertThat(run()).isEqualTo(Exit.OUR_FAULT);
    assertThat(err.toString(UTF_8))
        .startsWith("Something went wrong inside Arcwright; your input is not to blame")
        .contains("a wheel came off", "--trace")
        .doesNotContain("at org.arcwright");
  }

  @Test
  void the_stack_trace_is_there_for_the_asking() {
    assertThat(run("--trace")).isEqualTo(Exit.OUR_FAULT);
    assertThat(err.toString(UTF_8)).contains("\tat org.arcwright.cli.FaultsTest");
  }
}
