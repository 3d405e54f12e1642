package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ClockTest {
  private static Clock from(int month, int day, int hour, int minute) {
    return new Clock(
        Optional.of(
            ZonedDateTime.of(2027, month, day, hour, minute, 0, 0, ZoneId.of("Europe/Vienna"))));
  }

  @Test
  void shows_the_time_of_day_where_the_start_is_known() {
    Clock clock = from(3, 2, 9, 5);

    assertThat(clock.at(Duration.ofMinutes(60))).isEqualTo("10:05");
    assertThat(clock.said(Duration.ZERO)).isEqualTo("at 09:05");
    assertThat(clock.date()).contains("Tuesday 2 March 2027");
    assertThat(clock.zone()).contains("Europe/Vienna");
  }

  @Test
  void counts_from_the_start_where_it_is_not() {
    Clock clock = new Clock(Optional.empty());

    assertThat(clock.at(Duration.ofMinutes(65))).isEqualTo("1:05");
    assertThat(clock.said(Duration.ofMinutes(65))).isEqualTo("at 1:05 from the start");
    assertThat(clock.date()).isEmpty();
  }

  @Test
  void follows_the_clocks_on_the_wall_when_they_are_changed() {
    // Clocks in the European Union go forward at 01:00 UTC on the last Sunday of March
    // (2000/84/EC).
    Clock clock = from(3, 28, 1, 30);

    assertThat(clock.at(Duration.ofMinutes(60))).isEqualTo("03:30");
  }
}
