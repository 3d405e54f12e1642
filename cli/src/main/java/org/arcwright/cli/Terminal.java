package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;

/**
 * Where results and messages go, and how they may look there.
 *
 * @param out results; always UTF-8
 * @param err messages; always UTF-8
 * @param marks the characters that pictures may use on {@code out}
 * @param style whether {@code out} may be styled
 * @param width of a line on {@code out}
 * @param progress whether somebody watches {@code err}
 * @param in where answers come from, line by line
 */
public record Terminal(
    PrintStream out,
    PrintStream err,
    Marks marks,
    Style style,
    int width,
    boolean progress,
    BufferedReader in) {
  /** Width of lines in files. */
  public static final int PAGE = 100;

  private static final int UNKNOWN_TERMINAL = 80;
  private static final int NARROWEST = 60;
  private static final int WIDEST = 160;

  /** Where nobody answers. */
  public Terminal(
      PrintStream out, PrintStream err, Marks marks, Style style, int width, boolean progress) {
    this(out, err, marks, style, width, progress, new BufferedReader(Reader.nullReader()));
  }

  /** The process's own streams. */
  static Terminal system() {
    Map<String, String> environment = System.getenv();
    boolean watched = isTerminal(1);
    return new Terminal(
        new PrintStream(
            new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), 1 << 13),
            false,
            UTF_8),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, UTF_8),
        speaksUtf8() ? Marks.UNICODE : Marks.ASCII,
        watched && mayStyle(environment) ? Style.ANSI : Style.PLAIN,
        width(environment.getOrDefault("COLUMNS", ""), watched ? UNKNOWN_TERMINAL : PAGE),
        isTerminal(2),
        new BufferedReader(new InputStreamReader(System.in, answers())));
  }

  /** What the keyboard writes; a file or a pipe is in UTF-8, as all our files are. */
  private static Charset answers() {
    String encoding = System.getProperty("native.encoding", "UTF-8");
    return isTerminal(0) && Charset.isSupported(encoding) ? Charset.forName(encoding) : UTF_8;
  }

  /** As no-color.org has it: a NO_COLOR that is not empty forbids it. */
  private static boolean mayStyle(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "dumb").equals("dumb");
  }

  private static boolean speaksUtf8() {
    String encoding =
        System.getProperty("stdout.encoding", System.getProperty("native.encoding", "unknown"));
    return encoding.equalsIgnoreCase("UTF-8");
  }

  /** The number of columns that is said, within reason; else what is usual. */
  static int width(String columns, int usual) {
    try {
      return Math.min(WIDEST, Math.max(NARROWEST, Integer.parseInt(columns.strip())));
    } catch (NumberFormatException e) {
      return usual;
    }
  }

  /**
   * Whether a stream of that number leads to a terminal. Java cannot tell for each stream, so Linux
   * is asked; elsewhere it counts as one if both input and output are one.
   */
  private static boolean isTerminal(int stream) {
    Path link = Path.of("/proc/self/fd/" + stream);
    if (Files.isSymbolicLink(link)) {
      try {
        String target = Files.readSymbolicLink(link).toString();
        return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
      } catch (IOException e) {
        return false;
      }
    }
    return consoleIsTerminal();
  }

  /** From JDK 22 on there is a console without a terminal, and a method that tells them apart. */
  @SuppressWarnings("SystemConsoleNull") // before JDK 22 there is none without a terminal
  private static boolean consoleIsTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
