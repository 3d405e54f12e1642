package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.arcwright.cli.Main;
import org.arcwright.cli.Terminal;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;

/** The project as it lies on disk. Tests run in the folder of their module. */
final class Repository {
  static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  static final Path JAR = ROOT.resolve("cli/target/arcwright.jar");

  /**
   * What a command did.
   *
   * @param code exit code
   * @param out standard output
   * @param err standard error
   */
  record Ran(int code, String out, String err) {}

  private Repository() {}

  /** The example briefs, by name. */
  static List<Path> briefs() {
    try (Stream<Path> files = Files.list(ROOT.resolve("examples/briefs"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String readme() {
    try {
      return Files.readString(ROOT.resolve("README.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Runs the command line in this process, as if it had been called in the root folder. */
  static Ran arcwright(Path scratch, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, false, UTF_8),
            new PrintStream(err, true, UTF_8),
            Marks.UNICODE,
            Style.PLAIN,
            Terminal.PAGE,
            false);
    String[] args = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      boolean own = i > 0 && List.of("--out", "--catalog").contains(words[i - 1]);
      args[i] = own ? scratch.resolve(words[i]).toString() : located(scratch, words[i]);
    }
    int code = Main.run(terminal, args);
    return new Ran(code, out.toString(UTF_8), err.toString(UTF_8));
  }

  /** Files that exist lie in the project, all others in a scratch folder; {@code 4..12} is none. */
  private static String located(Path scratch, String word) {
    boolean folder = word.startsWith("examples/") && !word.contains(".");
    if (word.startsWith("-") || word.contains("..") || !(word.contains(".") || folder)) {
      return word;
    }
    Path file = ROOT.resolve(word);
    return (Files.exists(file) ? file : scratch.resolve(word)).toString();
  }
}
