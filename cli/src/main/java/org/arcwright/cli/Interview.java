package org.arcwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import org.arcwright.cli.document.Wrap;

/**
 * Asks questions and reads the answers, a line each. What is wrong is said and asked again; an
 * empty answer takes what stands in brackets; a question mark explains.
 */
final class Interview {
  private final BufferedReader in;
  private final PrintStream out;
  private final int width;

  Interview(Terminal terminal) {
    this.in = terminal.in();
    this.out = terminal.out();
    this.width = terminal.width();
  }

  /** An answer that cannot be taken; its message says what would be right. */
  static final class Wrong extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Wrong(String message) {
      super(message);
    }
  }

  /** Says something. */
  void say(String text) {
    text.lines().forEach(line -> Wrap.lines(line, width).forEach(out::println));
  }

  private void explain(String help) {
    help.lines()
        .map(String::strip)
        .forEach(line -> Wrap.hanging("  ", line, width).forEach(out::println));
  }

  /**
   * Asks until an answer can be taken.
   *
   * @param question short, without a colon
   * @param help what a question mark gets
   * @param usual what an empty answer means; empty if there must be one
   * @param reader takes the answer, or refuses it with {@link Wrong} or {@link
   *     InvalidValueException}
   * @throws Refusal if the answers end
   */
  <T> T ask(String question, String help, String usual, Function<String, T> reader) {
    while (true) {
      out.print(question + (usual.isEmpty() ? ": " : " [" + usual + "]: "));
      out.flush();
      String line = line(question).strip();
      if (line.equals("?")) {
        explain(help.isEmpty() ? "There is no more to say about it." : help);
        continue;
      }
      if (line.isEmpty() && usual.isEmpty()) {
        out.println("  Something must stand here; ? explains.");
        continue;
      }
      try {
        return reader.apply(line.isEmpty() ? usual : line);
      } catch (Wrong e) {
        out.println("  " + e.getMessage());
      } catch (InvalidValueException e) {
        out.println("  " + e.value() + ": " + e.remedy());
      }
    }
  }

  /** Asks for lines until an empty one. */
  List<String> lines(
      String question, String help, boolean required, Function<String, String> reader) {
    List<String> lines = new ArrayList<>();
    while (true) {
      boolean must = required && lines.isEmpty();
      Optional<String> line =
          ask(
              lines.isEmpty() ? question : "  and",
              help,
              must ? "" : lines.isEmpty() ? NONE : NO_MORE,
              answer ->
                  answer.equals(NONE) || answer.equals(NO_MORE)
                      ? Optional.empty()
                      : Optional.of(reader.apply(answer)));
      if (line.isEmpty()) {
        return lines;
      }
      lines.add(line.get());
    }
  }

  static final String NONE = "none";
  private static final String NO_MORE = "no more";

  /** Asks for one of an enumeration's words. */
  <E extends Enum<E> & Word> E word(
      String question, String help, Class<E> type, Optional<E> usual) {
    List<String> words = Arrays.stream(type.getEnumConstants()).map(Word::word).toList();
    return ask(
        question + " (" + String.join(", ", words) + ")",
        help,
        usual.map(Word::word).orElse(""),
        answer -> word(type, answer, words));
  }

  private static <E extends Enum<E> & Word> E word(
      Class<E> type, String answer, List<String> words) {
    return Word.find(type, answer)
        .orElseThrow(
            () ->
                new Wrong(
                    answer
                        + ": "
                        + Nearest.to(answer, words)
                            .map(near -> "perhaps " + near)
                            .orElseGet(() -> Word.all(type) + " is right")));
  }

  /** Asks for a whole number. */
  int whole(String question, String help, int usual, Function<Integer, Integer> check) {
    return ask(
        question,
        help,
        String.valueOf(usual),
        answer -> {
          if (!answer.matches("\\d{1,5}")) {
            throw new Wrong(answer + ": a whole number is right");
          }
          return check.apply(Integer.parseInt(answer));
        });
  }

  /** Asks for yes or no. */
  boolean yes(String question, String help, boolean usual) {
    return ask(
        question,
        help,
        usual ? "yes" : "no",
        answer ->
            switch (answer) {
              case "yes", "y" -> true;
              case "no", "n" -> false;
              default -> throw new Wrong(answer + ": yes or no is right");
            });
  }

  private String line(String question) {
    try {
      String line = in.readLine();
      if (line == null) {
        throw new Refusal(
            "\nThe answers ended at \"" + question.strip() + "\"; nothing is written");
      }
      return line;
    } catch (IOException e) {
      throw new Refusal("The answers cannot be read: " + e.getMessage(), e);
    }
  }
}
