package org.arcwright.cli.words;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;

/**
 * When things are: the time of day if the start is known, else hours and minutes from the start.
 *
 * @param start of the workshop
 * @param language to say it in
 */
public record Hours(Optional<ZonedDateTime> start, Language language) {
  /** The same hours as a clock in another zone shows them. */
  public Hours in(ZoneId zone) {
    return new Hours(start.map(begin -> begin.withZoneSameInstant(zone)), language);
  }

  /** {@code 09:05}, or {@code 0:05} from the start. */
  public String at(Duration offset) {
    return start
        .map(begin -> language.clock(begin.plus(offset).toLocalTime()))
        .orElseGet(() -> "%d:%02d".formatted(offset.toHours(), offset.toMinutesPart()));
  }

  /** {@code 09:05–09:20}. */
  public String span(Duration from, Duration to) {
    return language.say("time.span", at(from), at(to));
  }

  /** The day on which it starts, in full. */
  public Optional<String> date() {
    return day().map(language::date);
  }

  /** The day on which it starts. */
  public Optional<LocalDate> day() {
    return start.map(ZonedDateTime::toLocalDate);
  }

  /** When the zone's clocks are changed before so much time is over, if they are. */
  public Optional<ZoneOffsetTransition> change(Duration until) {
    return start.flatMap(
        begin ->
            Optional.ofNullable(begin.getZone().getRules().nextTransition(begin.toInstant()))
                .filter(change -> change.getInstant().isBefore(begin.plus(until).toInstant())));
  }

  /** The zone as its database names it. */
  public Optional<String> zone() {
    return start.map(begin -> begin.getZone().getId());
  }
}
