package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.forecast.Part.Rest;
import org.arcwright.forecast.Part.Work;
import org.junit.jupiter.api.Test;

class ForecasterTest {
  /** Allen et al. 2018, n = 252: 49 % of meetings on time, 37 % five and 14 % ten minutes late. */
  @Test
  void workshops_start_as_late_as_meetings_do() {
    Forecast forecast = new Day().exercise("talk", 20, 20, 20, 20).forecast(0);

    assertThat(forecast.onTime()).isEqualTo(0.49);
    assertThat(forecast.end(49)).isEqualTo(minutes(20));
    assertThat(forecast.end(50)).isEqualTo(minutes(25));
    assertThat(forecast.end(86)).isEqualTo(minutes(25));
    assertThat(forecast.end(87)).isEqualTo(minutes(30));
    assertThat(forecast.begins()).isEqualTo(band(0, 0, 5, 5, 10));
  }

  @Test
  void after_a_break_people_come_back_as_late_as_they_came() {
    Forecast forecast = new Day().exercise("talk", 20, 20, 20, 20).pause(10).forecast(5);

    assertThat(((Rest) forecast.parts().get(1)).took()).isEqualTo(band(10, 10, 15, 15, 20));
    // on time twice, or five minutes late once: .49 * .49 + 2 * .49 * .37
    assertThat(forecast.onTime()).isEqualTo(0.6027);
  }

  @Test
  void a_break_counts_as_on_time_within_five_minutes_either_way() {
    Rest pause =
        (Rest) onTheDot(new Day().exercise("talk", 5, 20, 35, 20).pause(10), 0).parts().get(1);
    BetaPert talk = new BetaPert(5, 20, 35);

    assertThat(pause.onTime())
        .isCloseTo(talk.chanceUpTo(25.5) - talk.chanceUpTo(14.5), within(5e-5));
  }

  @Test
  void an_exercise_squeezed_below_its_typical_time_overruns_more_often_and_further() {
    Duration before = Duration.ofMinutes(-1000);
    double chance = 2;
    for (int planned : new int[] {30, 25, 20, 15, 10}) {
      Forecast forecast = onTheDot(new Day().exercise("talk", 10, 20, 30, planned), 0);

      Duration over = forecast.end(80).minus(minutes(planned));
      assertThat(over).isGreaterThan(before);
      assertThat(forecast.onTime()).isLessThan(chance);
      before = over;
      chance = forecast.onTime();
    }
  }

  /** The weight of the most likely time in PERT's mean, Malcolm et al. 1959 (from memory). */
  @Test
  void of_each_minute_squeezed_out_two_thirds_are_saved() {
    double typical = Habits.took(range(10, 20, 30), 20).mean();

    assertThat(Habits.took(range(10, 20, 30), 14).mean()).isCloseTo(typical - 4, within(1e-9));
    assertThat(Habits.took(range(10, 20, 30), 26).mean()).isCloseTo(typical + 4, within(1e-9));
  }

  @Test
  void nothing_is_squeezed_below_the_shortest_time_that_works() {
    Forecast forecast = onTheDot(new Day().exercise("talk", 10, 20, 30, 5), 0);

    assertThat(forecast.end(1)).isGreaterThanOrEqualTo(minutes(10));
    assertThat(forecast.onTime()).isZero();
  }

  @Test
  void the_buffer_is_what_the_wanted_confidence_asks_for() {
    Day day = new Day().exercise("one", 10, 20, 40, 20).exercise("two", 10, 20, 40, 20);
    Duration buffer = day.forecast(0).buffer(90);

    assertThat(day.forecast((int) buffer.toMinutes()).onTime()).isGreaterThanOrEqualTo(0.9);
    assertThat(day.forecast((int) buffer.toMinutes() - 1).onTime()).isLessThan(0.9);
    assertThat(onTheDot(new Day().exercise("long", 5, 6, 7, 30), 0).buffer(50))
        .isEqualTo(Duration.ZERO);
  }

  @Test
  void the_riskiest_exercise_is_the_one_whose_plan_would_help_most() {
    Forecast forecast =
        new Day()
            .exercise("steady", 19, 20, 21, 20)
            .exercise("wild", 10, 20, 60, 20)
            .exercise("lively", 15, 20, 30, 20)
            .forecast(5);

    assertThat(forecast.riskiest()).contains(1);
    Work wild = (Work) forecast.parts().get(1);
    Forecast kept =
        new Day()
            .exercise("steady", 19, 20, 21, 20)
            .exercise("wild", 20, 20, 20, 20)
            .exercise("lively", 15, 20, 30, 20)
            .forecast(5);
    assertThat(wild.kept().onTime()).isEqualTo(kept.onTime());
    assertThat(wild.kept().end()).isEqualTo(kept.end(80));
  }

  @Test
  void nobody_carries_a_risk_where_all_is_certain() {
    assertThat(onTheDot(new Day().exercise("talk", 20, 20, 20, 20), 0).riskiest()).isEmpty();
  }

  @Test
  void what_the_catalog_does_not_know_is_assumed_and_said_to_be() {
    Forecast forecast = onTheDot(new Day().item("guest-talk", 20), 0);

    Work work = (Work) forecast.parts().get(0);
    assertThat(work.basis()).isEqualTo(Basis.ASSUMED);
    assertThat(forecast.end(1)).isGreaterThanOrEqualTo(minutes(15));
    assertThat(forecast.end(99)).isLessThanOrEqualTo(minutes(30));
  }

  @Test
  void a_group_that_an_exercise_does_not_serve_gets_the_nearest_size() {
    Day day = new Day().exercise("talk", 10, 20, 30, 20);
    Forecaster forecaster = Forecaster.of(day.catalog());

    assertThat(((Work) forecaster.forecast(day.agenda(20, 0)).parts().get(0)).basis())
        .isEqualTo(Basis.CATALOG);
    assertThat(((Work) forecaster.forecast(day.agenda(21, 0)).parts().get(0)).basis())
        .isEqualTo(Basis.NEAREST_SIZE);
  }

  /** PERT's mean of 10, 20 and 60 minutes by hand: (10 + 4 * 20 + 60) / 6. */
  @Test
  void how_long_an_exercise_takes_on_average_for_a_group_or_the_nearest_that_it_serves() {
    Exercise talk =
        new Day().exercise("talk", 10, 20, 60, 20).catalog().exercise("talk").orElseThrow();

    assertThat(Forecaster.expected(talk, 8, minutes(20))).isEqualTo(minutes(25));
    assertThat(Forecaster.expected(talk, 8, minutes(26))).isEqualTo(minutes(29));
    assertThat(Forecaster.expected(talk, 8, Duration.ofSeconds(20 * 60 + 30)))
        .isEqualTo(minutes(25).plusSeconds(20));
    assertThat(Forecaster.expected(talk, 500, minutes(20))).isEqualTo(minutes(25));
  }

  @Test
  void each_meal_waits_for_its_own_time_and_one_that_the_brief_does_not_know_for_none() {
    Day day =
        new Day()
            .exercise("one", 5, 20, 20, 20)
            .meal(30)
            .exercise("two", 5, 20, 20, 20)
            .meal(30)
            .exercise("three", 5, 20, 20, 20)
            .meal(30);
    Brief brief =
        Brief.builder("A day", "choose-a-direction", Mode.REMOTE, 8, minutes(300))
            .meal(new Meal(minutes(20), minutes(50), minutes(30)))
            .meal(new Meal(minutes(70), minutes(90), minutes(30)))
            .build();
    List<Part> parts =
        Forecaster.of(day.catalog())
            .forecast(day.agenda(8, 0), Optional.of(brief), Distribution.at(0))
            .parts();

    assertThat(parts.get(1).begins().p5()).isEqualTo(minutes(20));
    assertThat(parts.get(3).begins().p5()).isEqualTo(minutes(70));
    assertThat(parts.get(5).begins().p5()).isBetween(minutes(105), minutes(119));
  }

  @Test
  void what_an_agenda_puts_after_a_gap_waits_for_its_time() {
    Day day = new Day().exercise("one", 10, 20, 30, 20).gap(40).exercise("two", 20, 20, 20, 20);

    assertThat(onTheDot(day, 0).end(1)).isEqualTo(minutes(80));
    assertThat(onTheDot(day, 0).end(99)).isEqualTo(minutes(80));
  }

  @Test
  void what_the_brief_ties_to_a_time_waits_for_it_and_the_brief_says_the_end() {
    Day day =
        new Day()
            .exercise("one", 10, 20, 30, 20)
            .item("guest-talk", 20)
            .meal(30)
            .exercise("two", 20, 20, 20, 20);
    Brief brief =
        Brief.builder("A day", "choose-a-direction", Mode.REMOTE, 8, minutes(150))
            .ownItem(
                new OwnItem(
                    "guest-talk",
                    "A guest",
                    minutes(20),
                    Optional.empty(),
                    Optional.of(new Moment.After(minutes(20))),
                    2,
                    Format.PLENARY))
            .meal(new Meal(minutes(40), minutes(50), minutes(30)))
            .wishes(
                new Wishes(
                    Set.of(),
                    Set.of(),
                    List.of(new Wishes.Pin("two", new Moment.After(minutes(100)))),
                    Set.of()))
            .build();
    Forecast forecast =
        Forecaster.of(day.catalog())
            .forecast(day.agenda(8, 0), Optional.of(brief), Distribution.at(0));

    assertThat(forecast.parts().get(1).begins().p5()).isEqualTo(minutes(20));
    assertThat(forecast.parts().get(2).begins().p5()).isEqualTo(minutes(40));
    assertThat(forecast.end(1)).isEqualTo(minutes(120));
    assertThat(forecast.promised()).isEqualTo(minutes(150));
  }

  /** A start on the dot, so that only what is asked about is uncertain. */
  private static Forecast onTheDot(Day day, int buffer) {
    Agenda agenda = day.agenda(8, buffer);
    return Forecaster.of(day.catalog()).forecast(agenda, Optional.empty(), Distribution.at(0));
  }

  private static Minutes range(int min, int typical, int max) {
    return new Minutes(minutes(min), minutes(typical), minutes(max));
  }

  private static Band band(int p5, int p20, int p50, int p80, int p95) {
    return new Band(minutes(p5), minutes(p20), minutes(p50), minutes(p80), minutes(p95));
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
