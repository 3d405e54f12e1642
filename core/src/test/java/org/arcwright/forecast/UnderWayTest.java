package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.catalog.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A day that is under way: what is over is certain, what runs has run so long already. */
class UnderWayTest {
  private static final Brief BRIEF = brief(List.of());

  @Test
  void what_is_over_took_what_it_took() {
    Day day = new Day().exercise("one", 5, 10, 60, 25).exercise("two", 10, 20, 60, 35);

    Forecast forecast = at(60, day);

    assertThat(forecast.end(1)).isEqualTo(minutes(60));
    assertThat(forecast.end(99)).isEqualTo(minutes(60));
    assertThat(forecast.onTime()).isEqualTo(1);
    assertThat(forecast.parts().get(0).took().p5()).isEqualTo(minutes(25));
    assertThat(forecast.parts().get(1).begins().p95()).isEqualTo(minutes(25));
  }

  /**
   * Ten, twenty or sixty minutes, planned for twenty: shapes 1.8 and 4.2 by hand. The chances to
   * last longer, knowing that it lasts already, from Apache Commons Math 3.6.1.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 10, 12, 15, 19})
  void what_runs_can_only_last_longer(int now) {
    BetaDistribution took = new BetaDistribution(1.8, 4.2);
    double over = took.cumulativeProbability(Math.max(0, (now - 0.5 - 10) / 50.0));

    Forecast forecast = at(now, new Day().exercise("one", 10, 20, 60, 20));

    for (int percent : new int[] {5, 20, 50, 80, 95}) {
      double end = 10 + 50 * took.inverseCumulativeProbability(over + (1 - over) * percent / 100.0);
      assertThat((double) forecast.end(percent).toMinutes())
          .as("%d %% at minute %d", percent, now)
          .isCloseTo(end, within(0.51));
    }
  }

  @Test
  void a_break_that_runs_stretches_like_any_other() {
    Day day = new Day().exercise("one", 20, 20, 20, 20).pause(10).exercise("two", 5, 5, 5, 5);

    // Allen et al. 2018: 49 % on time, 37 % five minutes late, 14 % ten minutes late
    assertThat(at(25, day).end(49)).isEqualTo(minutes(35));
    assertThat(at(25, day).end(50)).isEqualTo(minutes(40));
    assertThat(at(25, day).end(87)).isEqualTo(minutes(45));
  }

  @Test
  void what_is_still_to_come_begins_no_earlier_than_now_nor_than_the_brief_ties_it_to() {
    Day day = new Day().exercise("one", 10, 10, 10, 10).meal(30).exercise("two", 5, 5, 5, 5);
    Brief lunch = brief(List.of(new Meal(minutes(10), minutes(20), minutes(30))));
    Brief later = brief(List.of(new Meal(minutes(15), minutes(20), minutes(30))));

    assertThat(begins(1, at(10, day, lunch))).isEqualTo(minutes(10));
    assertThat(begins(1, at(10, day, later))).isEqualTo(minutes(15));
  }

  @Test
  void after_a_gap_work_waits_for_its_time() {
    Day day = new Day().exercise("one", 10, 10, 10, 10).gap(20).exercise("two", 5, 5, 5, 5);

    assertThat(begins(1, at(10, day))).isEqualTo(minutes(30));
    assertThat(begins(1, at(25, day))).isEqualTo(minutes(30));
  }

  @Test
  void the_end_to_be_kept_is_the_agenda_s() {
    Agenda agenda = new Day().exercise("one", 10, 10, 10, 10).agenda(8, 7);

    assertThat(Forecaster.of(new Day().catalog()).forecast(agenda, BRIEF, minutes(5)).promised())
        .isEqualTo(minutes(17));
  }

  @Test
  void what_began_late_began_late() {
    Forecast forecast = at(12, new Day().gap(7).exercise("one", 10, 10, 10, 10));

    assertThat(forecast.begins().p5()).isEqualTo(minutes(7));
    assertThat(forecast.end(99)).isEqualTo(minutes(17));
  }

  private static Duration begins(int item, Forecast forecast) {
    return forecast.parts().get(item).begins().p5();
  }

  private static Forecast at(int now, Day day) {
    return at(now, day, BRIEF);
  }

  private static Forecast at(int now, Day day, Brief brief) {
    return Forecaster.of(day.catalog()).forecast(day.agenda(8, 0), brief, minutes(now));
  }

  private static Brief brief(List<Meal> meals) {
    BriefBuilder brief = Brief.builder("A day", "choose-a-direction", Mode.REMOTE, 8, minutes(240));
    meals.forEach(brief::meal);
    return brief.build();
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
