package org.arcwright.cli.handout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many of something a line of an exercise's materials asks for, such as "Three to five dots for
 * each person". Lines are read as English; what says nothing of the kind has none.
 *
 * @param each how many for each, 0 if the line does not say, or for each of something else too
 * @param unit for each what
 */
record Quantity(int each, Unit unit) {
  private static final List<String> NUMBERS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private static final Pattern PER =
      Pattern.compile(
          "\\b(?:each|every|per|an?)\\s+(person|participant|group|team|table|pair)\\b",
          Pattern.CASE_INSENSITIVE);

  /** For each of something else too, or some on top. */
  private static final Pattern MORE = Pattern.compile("\\b(?:each|spare)\\b");

  private static final Pattern COUNT =
      Pattern.compile("^(\\w+)(?:\\s+to\\s+(\\w+))?\\s+(\\w+)", Pattern.CASE_INSENSITIVE);

  /** For each what. */
  enum Unit {
    PERSON,
    GROUP,
    PAIR;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What the line says. */
  static Optional<Quantity> in(String line) {
    Matcher per = PER.matcher(line);
    if (!per.find()) {
      return Optional.empty();
    }
    Unit unit =
        switch (per.group(1).toLowerCase(Locale.ROOT)) {
          case "person", "participant" -> Unit.PERSON;
          case "pair" -> Unit.PAIR;
          default -> Unit.GROUP;
        };
    return Optional.of(
        new Quantity(
            MORE.matcher(line).region(per.end(), line.length()).find()
                ? 0
                : count(line.substring(0, per.start())),
            unit));
  }

  private static int count(String before) {
    Matcher words = COUNT.matcher(before);
    if (!words.find() || before.contains(" and ") || before.contains(" or ")) {
      return 0;
    }
    String most = Optional.ofNullable(words.group(2)).orElse(words.group(1));
    return words.group(3).equals("few") ? 0 : number(most.toLowerCase(Locale.ROOT));
  }

  private static int number(String word) {
    if (word.equals("a") || word.equals("an")) {
      return 1;
    }
    if (word.matches("\\d{1,3}")) {
      return Integer.parseInt(word);
    }
    return Math.max(0, NUMBERS.indexOf(word));
  }
}
