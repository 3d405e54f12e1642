package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;

/**
 * What is as dear as how many minutes more, as the table of {@link Sacrifice} says it. Common
 * practice, no source: the figures are ours, and these tests hold the sentences true.
 */
class SacrificeTest {
  private static final Brief FOUR_HOURS =
      Sample.brief(240)
          .start(ZonedDateTime.of(2027, 3, 9, 23, 0, 0, 0, ZoneId.of("Europe/Lisbon")))
          .build();

  @Test
  void a_minute_more_in_all_or_without_a_break_is_a_minute() {
    assertThat(dear(new Wish.Cap(minutes(240)), new Wish.Cap(minutes(275)))).isEqualTo(35);
    assertThat(dear(new Wish.Stretch(minutes(60)), new Wish.Stretch(minutes(75)))).isEqualTo(15);
  }

  @Test
  void a_minute_less_in_each_break_is_two() {
    assertThat(dear(new Wish.Pause(minutes(15)), new Wish.Pause(minutes(10)))).isEqualTo(10);
  }

  @Test
  void breaks_where_there_were_to_be_none_are_as_dear_as_they_are_long() {
    assertThat(dear(new Wish.Pause(minutes(0)), new Wish.Pause(minutes(10)))).isEqualTo(20);
  }

  @Test
  void a_hundredth_of_the_whole_time_less_kept_free_is_that_time() {
    assertThat(dear(new Wish.Buffer(15), new Wish.Buffer(10))).isEqualTo(12); // 5 % of 240
  }

  @Test
  void a_start_ten_minutes_earlier_or_later_is_five() {
    assertThat(dear(pinned(60), pinned(70))).isEqualTo(5);
    assertThat(dear(pinned(60), pinned(50))).isEqualTo(5);
    assertThat(dear(own(Optional.empty(), 60), own(Optional.empty(), 100))).isEqualTo(20);
  }

  @Test
  void a_start_on_the_clock_counts_over_midnight() {
    assertThat(dear(pinnedAt(23, 50), pinnedAt(0, 10))).isEqualTo(10);
  }

  @Test
  void a_meal_ten_minutes_earlier_or_later_is_five_and_a_minute_shorter_two() {
    assertThat(dear(meal(60, 90, 45), meal(50, 90, 45))).isEqualTo(5);
    assertThat(dear(meal(60, 90, 45), meal(60, 100, 45))).isEqualTo(5);
    assertThat(dear(meal(60, 90, 45), meal(60, 95, 45))).isEqualTo(3); // 2.5
    assertThat(dear(meal(60, 90, 45), meal(60, 90, 40))).isEqualTo(10);
  }

  @Test
  void each_tool_more_is_twenty_and_each_work_product_an_hour() {
    Wish call = new Wish.Tools(Set.of("call"));

    assertThat(dear(call, new Wish.Tools(Set.of("call", "music")))).isEqualTo(20);
    assertThat(dear(call, new Wish.Tools(Set.of("call", "music", "wall")))).isEqualTo(40);
    assertThat(dear(new Wish.Given(Set.of()), new Wish.Given(Set.of("feedback")))).isEqualTo(60);
  }

  @Test
  void another_phase_is_twenty_beside_another_time() {
    assertThat(dear(own(Optional.of("open"), 60), own(Optional.empty(), 60))).isEqualTo(20);
    assertThat(dear(own(Optional.of("open"), 60), own(Optional.empty(), 70))).isEqualTo(25);
  }

  @Test
  void each_level_more_personal_is_an_hour_and_each_person_half_of_one() {
    assertThat(dear(new Wish.Openness(1), new Wish.Openness(3))).isEqualTo(120);
    assertThat(dear(new Wish.People(8), new Wish.People(6))).isEqualTo(60);
    assertThat(dear(new Wish.People(8), new Wish.People(9))).isEqualTo(30);
  }

  @Test
  void what_is_done_without() {
    assertThat(struck(new Wish.Include("dots"))).isEqualTo(45);
    assertThat(struck(pinned(60))).isEqualTo(45);
    assertThat(struck(new Wish.LeaveOut("dots"))).isEqualTo(45);
    assertThat(struck(new Wish.Rule("never two silent exercises in a row"))).isEqualTo(60);
    assertThat(struck(own(Optional.empty(), 60))).isEqualTo(90);
    assertThat(struck(meal(60, 90, 45))).isEqualTo(180);
  }

  /** Else a way out could look as if it gave nothing up. */
  @Test
  void whatever_is_given_up_is_a_minute_at_the_least() {
    assertThat(dear(pinned(60), pinned(61))).isEqualTo(1);
    assertThat(
            new Sacrifice(Sample.brief(60).build())
                .of(new Wish.Buffer(2), Optional.of(new Wish.Buffer(1))))
        .isEqualTo(1);
  }

  @Test
  void a_wish_is_given_up_for_one_of_its_own_kind() {
    assertThatThrownBy(() -> dear(new Wish.People(8), new Wish.Buffer(8)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not of the kind of");
  }

  private static int dear(Wish wish, Wish instead) {
    return new Sacrifice(FOUR_HOURS).of(wish, Optional.of(instead));
  }

  private static int struck(Wish wish) {
    return new Sacrifice(FOUR_HOURS).of(wish, Optional.empty());
  }

  private static Wish pinned(int minute) {
    return new Wish.Pinned(new Wishes.Pin("dots", new Moment.After(minutes(minute))));
  }

  private static Wish pinnedAt(int hour, int minute) {
    Moment at = new Moment.Clock(LocalTime.of(hour, minute));
    return new Wish.Pinned(new Wishes.Pin("dots", at));
  }

  private static Wish own(Optional<String> phase, int minute) {
    Optional<Moment> at = Optional.of(new Moment.After(minutes(minute)));
    return new Wish.Own(
        new OwnItem("talk", "A guest speaks", minutes(20), phase, at, 2, Format.PLENARY));
  }

  private static Wish meal(int earliest, int latest, int length) {
    return new Wish.Meal(new Meal(minutes(earliest), minutes(latest), minutes(length)));
  }
}
