package org.arcwright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AfterTest {
  private static final LocalDate THURSDAY = LocalDate.of(2027, 3, 4);
  private static final LocalDate SATURDAY = LocalDate.of(2027, 3, 6);

  @Test
  void follow_ups_are_on_the_weekday_of_the_workshop() {
    assertThat(After.USUAL.days(THURSDAY))
        .containsExactly(
            LocalDate.of(2027, 3, 18), LocalDate.of(2027, 4, 1), LocalDate.of(2027, 4, 15));
    assertThat(After.USUAL.afterWeekend(THURSDAY)).isFalse();
  }

  @Test
  void after_a_weekend_they_are_on_the_next_working_day() {
    assertThat(After.USUAL.days(SATURDAY))
        .containsExactly(
            LocalDate.of(2027, 3, 22), LocalDate.of(2027, 4, 5), LocalDate.of(2027, 4, 19));
    assertThat(After.USUAL.days(SATURDAY.plusDays(1)))
        .isEqualTo(After.USUAL.days(SATURDAY))
        .allMatch(day -> day.getDayOfWeek() == DayOfWeek.MONDAY);
    assertThat(After.USUAL.afterWeekend(SATURDAY)).isTrue();
  }

  @Test
  void a_day_that_somebody_has_named_stays() {
    After named = new After(Optional.empty(), Optional.of(SATURDAY), 1, 2);

    assertThat(named.days(THURSDAY)).containsExactly(SATURDAY, SATURDAY.plusWeeks(1));
    assertThat(named.afterWeekend(SATURDAY)).isFalse();
  }
}
