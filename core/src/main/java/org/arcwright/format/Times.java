package org.arcwright.format;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Values;

/** Durations and clock times as people write them, and as numbers of minutes. */
final class Times {
  private static final Pattern UNITS =
      Pattern.compile("(?:(\\d{1,4}) ?h(?: ?(?=\\d))?)?(?:(\\d{1,5}) ?m(?:in)?)?");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):([0-5]\\d)(?::([0-5]\\d))?");
  private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

  private Times() {}

  /** A duration in whole minutes with its unit: {@code 3h}, {@code 90 min}, {@code PT2H30M}. */
  static Optional<Duration> duration(Node node, String what, Faults faults) {
    Optional<Duration> parsed =
        node instanceof Scalar scalar && scalar.type() == ScalarType.TEXT
            ? parse(scalar.text()).filter(Times::isWholeMinutes)
            : Optional.empty();
    if (parsed.isEmpty()) {
      boolean bare = node instanceof Scalar scalar && scalar.type() == ScalarType.WHOLE;
      faults.add(
          node,
          what,
          bare ? "say the unit, such as " + node.shown() + "m" : "write it as 3h, 90m or 2h30m");
    }
    return parsed;
  }

  /** A duration, if the text is one; never negative. */
  static Optional<Duration> parse(String text) {
    Matcher matcher = UNITS.matcher(text);
    if (matcher.matches() && !text.isEmpty()) {
      return Optional.of(Duration.ofHours(number(matcher, 1)).plusMinutes(number(matcher, 2)));
    }
    if (!text.startsWith("P")) {
      return Optional.empty();
    }
    try {
      Duration duration = Duration.parse(text);
      return Optional.of(duration).filter(d -> !d.isNegative());
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static boolean isWholeMinutes(Duration duration) {
    return duration.equals(duration.truncatedTo(ChronoUnit.MINUTES));
  }

  private static long number(Matcher matcher, int group) {
    String digits = matcher.group(group);
    return digits == null ? 0 : Long.parseLong(digits);
  }

  /** A duration with its unit, as {@link #duration} reads it: {@code 2h30m}. */
  static String text(Duration duration) {
    if (!isWholeMinutes(duration)) {
      return duration.toString();
    }
    long hours = duration.toHours();
    int minutes = duration.toMinutesPart();
    return (hours > 0 ? hours + "h" : "") + (minutes > 0 || hours == 0 ? minutes + "m" : "");
  }

  /** A number of minutes, such as 5 or 0.5, or a duration with its unit. */
  static Optional<Duration> minutes(Node node, String what, Faults faults) {
    if (node instanceof Scalar scalar && scalar.type() == ScalarType.TEXT) {
      Optional<Duration> parsed = parse(scalar.text());
      if (parsed.isEmpty()) {
        faults.add(node, what, "write a number of minutes, such as 5 or 0.5");
      }
      return parsed;
    }
    if (node instanceof Scalar scalar && scalar.type() == ScalarType.WHOLE) {
      return Values.whole(node, what, faults).map(Duration::ofMinutes);
    }
    Optional<BigDecimal> number = Values.number(node, what, faults);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal seconds = number.get().multiply(SECONDS).stripTrailingZeros();
    if (seconds.scale() > 0) {
      faults.add(node, what, "whole, half and quarter minutes are right");
      return Optional.empty();
    }
    return Optional.of(Duration.ofSeconds(seconds.longValueExact()));
  }

  /** The minutes as a number where that is exact in quarters, else with the unit. */
  static Node minutes(Duration duration) {
    if (isWholeMinutes(duration)) {
      return Branch.number(duration.toMinutes());
    }
    if (!duration.equals(Duration.ofSeconds(duration.toSeconds() / 15 * 15))) {
      return Branch.text(duration.toString());
    }
    BigDecimal minutes = BigDecimal.valueOf(duration.toSeconds()).divide(SECONDS);
    return new Scalar(0, 0, ScalarType.DECIMAL, minutes.toPlainString());
  }

  /** A time of day, if the text is one: {@code 9:30}. */
  static Optional<LocalTime> clock(String text) {
    Matcher matcher = CLOCK.matcher(text);
    if (!matcher.matches() || number(matcher, 1) > 23) {
      return Optional.empty();
    }
    return Optional.of(
        LocalTime.of((int) number(matcher, 1), (int) number(matcher, 2), (int) number(matcher, 3)));
  }

  /** Writes when it starts, to the minute, and in which zone. */
  static void putStart(Branch branch, Optional<ZonedDateTime> start) {
    start.ifPresent(
        time -> branch.put("start", START.format(time)).put("zone", time.getZone().getId()));
  }
}
