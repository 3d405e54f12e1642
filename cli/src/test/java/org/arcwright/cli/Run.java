package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;

/**
 * One command, run in this process with its streams caught.
 *
 * @param code its exit code
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record Run(int code, String out, String err) {
  static Run of(Object... args) {
    return answering("", args);
  }

  /** A command that asks, and is given these lines. */
  static Run answering(String answers, Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, false, UTF_8),
            new PrintStream(err, true, UTF_8),
            Marks.UNICODE,
            Style.PLAIN,
            80,
            false,
            new BufferedReader(new StringReader(answers)));
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    int code = Main.run(terminal, words);
    return new Run(code, out.toString(UTF_8), err.toString(UTF_8));
  }
}
