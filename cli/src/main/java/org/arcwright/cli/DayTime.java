package org.arcwright.cli;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.agenda.Agenda;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A time on the day of a workshop: a time of day, or hours and minutes from the start.
 *
 * @param text as it was written
 * @param hours of the day, or from the start
 * @param minutes beside them
 * @param clock whether it was written as a time of day
 */
record DayTime(String text, int hours, int minutes, boolean clock) {
  /** How far before a start a time still counts as before it, and not as after midnight. */
  private static final Duration EVENING = Duration.ofHours(6);

  /**
   * The time, counted from the agenda's planned start. One of an agenda without a start counts from
   * there anyway.
   *
   * @throws Refusal if it is before the start
   */
  Duration on(Agenda agenda) {
    Optional<ZonedDateTime> start = agenda.start();
    if (!clock || start.isEmpty()) {
      return Duration.ofHours(hours).plusMinutes(minutes);
    }
    if (hours > 23) {
      throw new Refusal(text + ": no time of day; write one such as " + shown(start.get()));
    }
    ZonedDateTime then = start.get().with(LocalTime.of(hours, minutes));
    if (then.isBefore(start.get().minus(EVENING))) {
      then = then.plusDays(1);
    }
    if (then.isBefore(start.get())) {
      throw new Refusal(
          text
              + ": before the agenda's start at "
              + shown(start.get())
              + "; nothing has slipped yet");
    }
    return Duration.between(start.get(), then);
  }

  /** The time of day so long after an agenda's start, or how long that is if it has none. */
  static String shown(Agenda agenda, Duration offset) {
    return agenda
        .start()
        .map(start -> shown(start.plus(offset)))
        .orElseGet(
            () -> "%d:%02d from the start".formatted(offset.toHours(), offset.toMinutesPart()));
  }

  private static String shown(ZonedDateTime time) {
    return "%02d:%02d".formatted(time.getHour(), time.getMinute());
  }

  /** Reads {@code 10:40}, {@code 1h40m} or {@code 100m}. */
  static final class Converter implements ITypeConverter<DayTime> {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):([0-5]\\d)");
    private static final Pattern SPAN = Pattern.compile("(?:(\\d{1,2})h)?(?:(\\d{1,4})m(?:in)?)?");

    @Override
    public DayTime convert(String text) {
      Matcher matcher = CLOCK.matcher(text);
      boolean clock = matcher.matches();
      if (!clock) {
        matcher = SPAN.matcher(text);
        if (text.isEmpty() || !matcher.matches()) {
          throw new TypeConversionException(
              "\""
                  + text
                  + "\" is no time; write a time of day such as 10:40, or a time from the start such"
                  + " as 1h40m");
        }
      }
      return new DayTime(text, number(matcher.group(1)), number(matcher.group(2)), clock);
    }

    private static int number(String digits) {
      return digits == null ? 0 : Integer.parseInt(digits);
    }
  }
}
