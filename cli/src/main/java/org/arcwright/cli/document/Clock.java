package org.arcwright.cli.document;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Optional;
import org.arcwright.cli.words.Language;

/**
 * Times as an agenda shows them: the time of day if the start is known, else hours and minutes from
 * the start. Written by hand, for a formatter with its locale data would take longer to load than
 * an agenda takes to compose.
 */
final class Clock {
  private final Optional<ZonedDateTime> start;

  Clock(Optional<ZonedDateTime> start) {
    this.start = start;
  }

  /** Whether it shows the time of day. */
  boolean ofDay() {
    return start.isPresent();
  }

  /** {@code 09:05}, or {@code 0:05} from the start. */
  String at(Duration offset) {
    if (start.isEmpty()) {
      return offset.toHours() + ":" + twoDigits(offset.toMinutesPart());
    }
    ZonedDateTime then = start.get().plus(offset);
    return twoDigits(then.getHour()) + ":" + twoDigits(then.getMinute());
  }

  /** {@code at 09:05}, or {@code at 0:05 from the start}, for a sentence. */
  String said(Duration offset) {
    return said(offset, Language.ENGLISH);
  }

  /** As {@link #said(Duration)}, in a language of the documents. */
  String said(Duration offset, Language language) {
    return language.say(ofDay() ? "why.at" : "why.from-start", at(offset));
  }

  /** {@code Tuesday 3 March 2026}, if the start is known. */
  Optional<String> date() {
    return start.map(
        day ->
            name(day.getDayOfWeek())
                + " "
                + day.getDayOfMonth()
                + " "
                + name(day.getMonth())
                + " "
                + day.getYear());
  }

  /** {@code Europe/Berlin}, if the start is known. */
  Optional<String> zone() {
    return start.map(day -> day.getZone().getId());
  }

  private static String name(DayOfWeek day) {
    return capitalised(day.name());
  }

  private static String name(Month month) {
    return capitalised(month.name());
  }

  private static String capitalised(String name) {
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  private static String twoDigits(int number) {
    return number < 10 ? "0" + number : String.valueOf(number);
  }
}
