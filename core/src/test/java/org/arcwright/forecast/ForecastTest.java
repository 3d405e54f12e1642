package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.forecast.Part.Kept;
import org.arcwright.forecast.Part.Rest;
import org.arcwright.forecast.Part.Work;
import org.junit.jupiter.api.Test;

/** What a forecast says of itself, and what is none. */
class ForecastTest {
  /** Twenty minutes of work, ten of rest and twenty of work: it ends at minute 50. */
  private static final Agenda AGENDA =
      new Day().item("one", 20).pause(10).item("two", 20).agenda(8, 10);

  private static final Band BAND = band(1, 2, 3, 4, 5);

  @Test
  void the_end_with_some_per_cent_and_the_time_to_keep_free_for_it() {
    Forecast forecast = forecast(ends(), List.of(work(0.5, 60), rest(), work(0.5, 60)));

    assertThat(forecast.end(1)).isEqualTo(minutes(1));
    assertThat(forecast.end(99)).isEqualTo(minutes(99));
    assertThat(forecast.buffer(80)).isEqualTo(minutes(30));
    assertThat(forecast.buffer(50)).isEqualTo(minutes(0));
    assertThat(forecast.buffer(20)).isEqualTo(minutes(0));
    assertThatThrownBy(() -> forecast.end(0)).hasMessage("percent is 0: 1 to 99 is right");
    assertThatThrownBy(() -> forecast.end(100)).hasMessage("percent is 100: 1 to 99 is right");
  }

  /** With 80 per cent it is over after 80 minutes, and on time with a half. */
  @Test
  void the_riskiest_brings_the_end_forward_most_and_then_the_chance_up() {
    assertThat(riskiest(work(0.5, 79), work(0.5, 78))).isEqualTo(2);
    assertThat(riskiest(work(0.5, 78), work(0.9, 79))).isEqualTo(0);
    assertThat(riskiest(work(0.6, 78), work(0.7, 78))).isEqualTo(2);
    assertThat(riskiest(work(0.7, 78), work(0.7, 78))).isEqualTo(0);
    assertThat(riskiest(work(0.6, 80), work(0.5, 80))).isEqualTo(0);
  }

  @Test
  void nothing_is_risky_that_would_help_nothing() {
    assertThat(forecast(ends(), List.of(work(0.5, 80), rest(), work(0.9, 81))).riskiest())
        .isEmpty();
  }

  @Test
  void ends_are_99_and_never_fall() {
    List<Duration> few = ends().subList(0, 98);
    List<Duration> falling = new ArrayList<>(ends());
    falling.set(98, minutes(97));
    List<Duration> level = new ArrayList<>(ends());
    level.set(98, minutes(98));
    List<Part> parts = List.of(work(0.5, 60), rest(), work(0.5, 60));

    refused(() -> forecast(few, parts), "ends is 98 times: 99 are right");
    refused(() -> forecast(falling, parts), "ends[98] is 97: no earlier than the one before");
    assertThat(forecast(level, parts).end(99)).isEqualTo(minutes(98));
  }

  @Test
  void there_is_a_part_for_each_item_and_of_its_kind() {
    refused(
        () -> forecast(ends(), List.of(work(0.5, 60), rest())),
        "parts is 2: one for each item, 3, is right");
    refused(
        () -> forecast(ends(), List.of(work(0.5, 60), work(0.5, 60), work(0.5, 60))),
        "parts[1] is work: it is the item's own kind");
    refused(
        () -> forecast(ends(), List.of(work(0.5, 60), rest(), rest())),
        "parts[2] is rest: it is the item's own kind");
  }

  @Test
  void a_chance_is_from_none_to_certain() {
    assertThat(new Kept(0, minutes(5)).onTime()).isZero();
    assertThat(new Rest(1, BAND, BAND, BAND).onTime()).isEqualTo(1);
    for (double chance : new double[] {-0.1, 1.1, Double.NaN}) {
      String message = "onTime is " + chance + ": a chance from 0 to 1 is right";
      refused(() -> new Kept(chance, minutes(5)), message);
      refused(() -> new Rest(chance, BAND, BAND, BAND), message);
      refused(() -> new Forecast(AGENDA, minutes(60), chance, BAND, ends(), List.of()), message);
    }
  }

  @Test
  void the_times_of_a_band_ascend() {
    assertThat(band(5, 5, 5, 5, 5).p95()).isEqualTo(minutes(5));
    refused(() -> band(1, 2, 3, 4, 3), "band is 3: the five times of a band ascend");
    refused(() -> band(2, 1, 3, 4, 5), "band is 1: the five times of a band ascend");
  }

  @Test
  void a_band_is_of_the_five_percentages_that_it_names() {
    Distribution evenly =
        Distribution.of(1, IntStream.rangeClosed(1, 100).mapToDouble(i -> 1).toArray());

    assertThat(Band.of(evenly)).isEqualTo(band(5, 20, 50, 80, 95));
  }

  private static int riskiest(Work one, Work two) {
    return forecast(ends(), List.of(one, rest(), two)).riskiest().orElseThrow();
  }

  private static Forecast forecast(List<Duration> ends, List<Part> parts) {
    return new Forecast(AGENDA, minutes(60), 0.5, BAND, ends, parts);
  }

  /** With one per cent after one minute, and so on. */
  private static List<Duration> ends() {
    return IntStream.rangeClosed(1, 99).mapToObj(ForecastTest::minutes).toList();
  }

  private static Work work(double onTime, int end) {
    return new Work(Basis.CATALOG, BAND, BAND, BAND, new Kept(onTime, minutes(end)));
  }

  private static Rest rest() {
    return new Rest(0.5, BAND, BAND, BAND);
  }

  private static Band band(int p5, int p20, int p50, int p80, int p95) {
    return new Band(minutes(p5), minutes(p20), minutes(p50), minutes(p80), minutes(p95));
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }

  private static void refused(Runnable what, String message) {
    assertThatThrownBy(what::run).isInstanceOf(InvalidValueException.class).hasMessage(message);
  }
}
