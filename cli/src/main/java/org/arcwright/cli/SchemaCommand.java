package org.arcwright.cli;

import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import org.arcwright.format.Schema;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Prints the schema of a kind of file. */
@Command(
    name = "schema",
    description = {
      "Prints the JSON Schema of a kind of file, so that an editor completes and checks it while"
          + " you type.",
      ""
    },
    footer = {
      "",
      "Try:  arcwright schema exercise > exercise.schema.json",
      "Then, as the first line of each exercise:",
      "# yaml-language-server: $schema=exercise.schema.json"
    },
    sortOptions = false)
final class SchemaCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "FILE",
      converter = Kind.class,
      description =
          "exercise, goal, brief, agenda, composition, options, clash, why-not, why-this, review,"
              + " forecast, replan, stand-ins, lessons, log, record, problems, instance, solution or verdict")
  private Schema schema = Schema.EXERCISE;

  private final Terminal terminal;

  SchemaCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    terminal.out().print(schema.text());
    return Exit.DONE;
  }

  /** Reads the word for a kind of file. */
  static final class Kind implements ITypeConverter<Schema> {
    @Override
    public Schema convert(String word) {
      return Word.find(Schema.class, word)
          .orElseThrow(
              () -> new TypeConversionException("\"" + word + "\" has none; " + right(word)));
    }

    private static String right(String word) {
      return Nearest.to(word, Stream.of(Schema.values()).map(Word::word).toList())
          .map(near -> "perhaps " + near)
          .orElseGet(() -> Word.all(Schema.class) + " is right");
    }
  }
}
