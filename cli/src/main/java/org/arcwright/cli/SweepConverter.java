package org.arcwright.cli;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Parameter;
import org.arcwright.compose.Sweep;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads what is to be varied, such as {@code cap=120..240/15}, {@code cap=2h..4h/15m}, {@code
 * people=6..20}, {@code buffer=0%..30%/5%} or {@code energy=-1..1/0.5}.
 */
final class SweepConverter implements ITypeConverter<Sweep> {
  private static final Pattern TIME = Pattern.compile("(?:(\\d{1,2})h)?(?:(\\d{1,4})m?)?");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3})%?");
  private static final Pattern LEVEL = Pattern.compile("-?(\\d)(?:\\.(\\d))?");

  @Override
  public Sweep convert(String text) {
    return new Reading(text).sweep();
  }

  /** One text, part by part. */
  private record Reading(String text) {
    Sweep sweep() {
      int equals = text.indexOf('=');
      Parameter parameter = parameter(equals < 0 ? text : text.substring(0, equals));
      if (equals < 0) {
        throw refuse(text.length(), "", "add from where to where, such as " + example(parameter));
      }
      int dots = text.indexOf("..", equals);
      if (dots < 0) {
        throw refuse(
            equals + 1, text.substring(equals + 1), "write a range, such as " + example(parameter));
      }
      int slash = text.indexOf('/', dots);
      int end = slash < 0 ? text.length() : slash;
      int from = within(parameter, equals + 1, dots);
      int to = within(parameter, dots + 2, end);
      if (to < from) {
        throw refuse(dots + 2, text.substring(dots + 2, end), "the smaller one comes first");
      }
      int step = slash < 0 ? usualStep(parameter) : value(parameter, slash + 1, text.length());
      if (step < 1) {
        throw refuse(slash + 1, text.substring(slash + 1), "a step is over 0");
      }
      int values = (to - from) / step + 1;
      if (values > Sweep.MOST) {
        throw refuse(
            equals + 1,
            text.substring(equals + 1),
            "these are "
                + values
                + " values; at most "
                + Sweep.MOST
                + " are right, so take a larger step");
      }
      return new Sweep(parameter, from, to, step);
    }

    private Parameter parameter(String word) {
      return Word.find(Parameter.class, word)
          .orElseThrow(
              () ->
                  refuse(
                      0,
                      word,
                      Nearest.to(word, Arrays.stream(Parameter.values()).map(Word::word).toList())
                          .map(near -> "perhaps " + near + " is meant")
                          .orElse(Word.all(Parameter.class) + " can be varied")));
    }

    private int within(Parameter parameter, int begin, int end) {
      int value = value(parameter, begin, end);
      if (value < parameter.least() || value > parameter.most()) {
        throw refuse(begin, text.substring(begin, end), bounds(parameter));
      }
      return value;
    }

    private int value(Parameter parameter, int begin, int end) {
      String part = text.substring(begin, end);
      return read(parameter, part).orElseThrow(() -> refuse(begin, part, form(parameter)));
    }

    private TypeConversionException refuse(int at, String part, String remedy) {
      return new TypeConversionException(
          "\""
              + text
              + "\", character "
              + (at + 1)
              + ": "
              + (part.isEmpty() ? "" : "\"" + part + "\": ")
              + remedy);
    }
  }

  private static OptionalInt read(Parameter parameter, String part) {
    return switch (parameter) {
      case CAP -> time(part);
      case PEOPLE ->
          WHOLE.matcher(part).matches()
              ? OptionalInt.of(Integer.parseInt(part))
              : OptionalInt.empty();
      case BUFFER -> {
        Matcher percent = PERCENT.matcher(part);
        yield percent.matches() ? OptionalInt.of(number(percent, 1)) : OptionalInt.empty();
      }
      case ENERGY -> {
        Matcher level = LEVEL.matcher(part);
        yield level.matches()
            ? OptionalInt.of(
                (part.startsWith("-") ? -1 : 1) * (10 * number(level, 1) + number(level, 2)))
            : OptionalInt.empty();
      }
    };
  }

  private static OptionalInt time(String part) {
    Matcher time = TIME.matcher(part);
    return time.matches() && !part.isEmpty()
        ? OptionalInt.of(60 * number(time, 1) + number(time, 2))
        : OptionalInt.empty();
  }

  /** The digits of a group as a number; 0 if the group is not there. */
  private static int number(Matcher matcher, int group) {
    String digits = matcher.group(group);
    return digits == null ? 0 : Integer.parseInt(digits);
  }

  private static int usualStep(Parameter parameter) {
    return switch (parameter) {
      case CAP -> 15;
      case PEOPLE -> 1;
      case BUFFER, ENERGY -> 5;
    };
  }

  private static String example(Parameter parameter) {
    return switch (parameter) {
      case CAP -> "cap=2h..4h/15m";
      case PEOPLE -> "people=6..20";
      case BUFFER -> "buffer=0%..30%/5%";
      case ENERGY -> "energy=-1..1/0.5";
    };
  }

  private static String form(Parameter parameter) {
    return switch (parameter) {
      case CAP -> "write minutes, such as 120 or 2h30m";
      case PEOPLE -> "write a whole number, such as 12";
      case BUFFER -> "write whole per cent, such as 15%";
      case ENERGY -> "write levels more or less, such as -1 or 0.5";
    };
  }

  private static String bounds(Parameter parameter) {
    return switch (parameter) {
      case CAP -> "from 15 minutes to 40 hours is right";
      case PEOPLE -> "from 1 to 1,000 people is right";
      case BUFFER -> "from 0% to 100% is right";
      case ENERGY -> "from -4 to 4 levels is right";
    };
  }
}
