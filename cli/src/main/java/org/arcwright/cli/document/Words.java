package org.arcwright.cli.document;

import java.time.Duration;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.words.Language;

/** Small phrases that every document says in the same way. */
final class Words {
  private static final String[] SMALL_NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  /** A blank at which no line may end; {@link #untied} makes it an ordinary one. */
  private static final String TIE = "\u00a0";

  private Words() {}

  /** The finished text with ordinary blanks only. */
  static String untied(String text) {
    return text.replace(TIE, " ");
  }

  /** The text with blanks at which no line ends. */
  static String tied(String text) {
    return text.replace(" ", TIE);
  }

  /** {@code 35 min}, {@code 2 h} or {@code 2 h 40 min}. */
  static String time(int minutes) {
    if (minutes < 60) {
      return minutes + TIE + "min";
    }
    String hours = minutes / 60 + TIE + "h";
    return minutes % 60 == 0 ? hours : hours + TIE + minutes % 60 + TIE + "min";
  }

  /** As {@link #time(int)}. */
  static String time(Duration duration) {
    return time(Answer.minutes(duration));
  }

  /** {@code 93 %}; {@code over 99 %} and {@code under 1 %}, for nothing is certain. */
  static String chance(double chance) {
    return Language.ENGLISH.chance(chance);
  }

  /** {@code one break}, {@code 12 breaks}. */
  static String count(int number, String one, String many) {
    String words = number < SMALL_NUMBERS.length ? SMALL_NUMBERS[number] : grouped(number);
    return words + " " + (number == 1 ? one : many);
  }

  /** {@code 1,234,567}. */
  static String grouped(long number) {
    StringBuilder text = new StringBuilder(String.valueOf(number));
    for (int i = text.length() - 3; i > (number < 0 ? 1 : 0); i -= 3) {
      text.insert(i, ',');
    }
    return text.toString();
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> words) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      if (i > 0) {
        text.append(i == words.size() - 1 ? " and " : ", ");
      }
      text.append(words.get(i));
    }
    return text.toString();
  }

  /** A sentence's first letter made large. */
  static String sentence(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  static String quoted(String text) {
    return "\"" + text + "\"";
  }

  static String kind(Activity activity) {
    return activity.kind().map(Kind::word).orElse("own item");
  }

  static String format(Format format) {
    return format == Format.SMALL_GROUPS ? "small groups" : format.word();
  }

  static String mode(Mode mode) {
    return mode == Mode.IN_PERSON ? "in person" : mode.word();
  }

  /** An energy in tenths as a level: {@code 3} or {@code 3.4}. */
  static String level(int tenths) {
    return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
  }
}
