package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.instance.Instance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class TimingTest {

  @Nested
  class The_grid {
    @Test
    void is_five_minutes() {
      assertThat(of(brief(90)).grid()).isEqualTo(5);
    }

    @Test
    void is_the_largest_that_meets_every_exact_time() {
      assertThat(of(brief(90).rhythm(rhythm(30, 60, 12))).grid()).isEqualTo(4);
      assertThat(of(pinned(brief(90), 12).rhythm(rhythm(30, 60, 9))).grid()).isEqualTo(3);
      assertThat(of(brief(90).meal(meal(20, 40, 32))).grid()).isEqualTo(2);
      assertThat(of(pinned(brief(90), 7)).grid()).isEqualTo(1);
      assertThat(of(brief(90).ownItem(talk(13, Optional.empty()))).grid()).isEqualTo(1);
    }

    @Test
    void stays_at_five_for_a_cap_between_two_cells_and_leaves_the_rest_unused() {
      Timing timing = of(brief(93));

      assertThat(timing.grid()).isEqualTo(5);
      assertThat(timing.cap()).isEqualTo(90);
    }

    @Test
    void stays_at_five_for_the_longest_cap_and_stretch_there_are() {
      assertThat(of(brief(40 * 60).rhythm(rhythm(45, 300, 15))).grid()).isEqualTo(5);
    }

    @Test
    void is_refused_by_the_minute_for_a_long_day() {
      assertThatThrownBy(() -> of(pinned(brief(512), 67)))
          .isInstanceOf(InvalidValueException.class)
          .hasMessage(
              "pin is dots at 67 min: write a multiple of 5 minutes; a plan by the minute ends at"
                  + " a cap of 511 and stretches of 62 minutes");
      assertThat(of(pinned(brief(511), 67)).grid()).isEqualTo(1);
    }

    @Test
    void may_be_a_minute_for_stretches_of_62() {
      assertThat(of(pinned(brief(180), 67).rhythm(rhythm(30, 62, 10))).grid()).isEqualTo(1);
      assertThatThrownBy(() -> of(pinned(brief(180), 67).rhythm(rhythm(30, 63, 10))))
          .isInstanceOf(InvalidValueException.class);
    }

    @Test
    void is_refused_by_the_minute_for_long_stretches() {
      assertThatThrownBy(
              () ->
                  of(
                      Sample.brief(Mode.IN_PERSON, 8, 180)
                          .ownItem(talk(20, Optional.of(new Moment.After(minutes(31)))))))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageStartingWith("own-items is guest-talk at 31 min: ");
    }
  }

  @Nested
  class Exact_times {
    @Test
    void are_kept_as_they_are() {
      Timing timing =
          of(
              pinned(brief(240), 60)
                  .rhythm(rhythm(30, 50, 15))
                  .meal(meal(100, 140, 45))
                  .ownItem(talk(20, Optional.of(new Moment.After(minutes(35))))));

      assertThat(timing.breakMinutes()).isEqualTo(15);
      assertThat(timing.meals()).containsExactly(new Instance.Meal(100, 140, 45));
      assertThat(timing.pins())
          .containsExactlyInAnyOrder(
              new Instance.Pin("dots", 60), new Instance.Pin("guest-talk", 35));
    }

    @Test
    void on_the_clock_count_from_the_start_wherever_it_is() {
      ZonedDateTime start = ZonedDateTime.of(2027, 3, 9, 9, 30, 0, 0, ZoneId.of("Asia/Kolkata"));
      BriefBuilder brief =
          brief(120)
              .start(start)
              .wishes(wishes(new Wishes.Pin("dots", new Moment.Clock(LocalTime.of(10, 15)))));

      assertThat(of(brief).pins()).containsExactly(new Instance.Pin("dots", 45));
    }

    @Test
    void with_seconds_are_refused() {
      assertThatThrownBy(
              () ->
                  of(
                      brief(90)
                          .rhythm(new Rhythm(minutes(30), minutes(60), Duration.ofSeconds(450)))))
          .hasMessage("break is 7 min 30 s: write whole minutes, such as 7 min");
    }
  }

  @Nested
  class Limits {
    @Test
    void are_rounded_to_the_safe_side() {
      Timing timing = of(brief(180).rhythm(rhythm(33, 58, 10)).meal(meal(61, 89, 30)));

      assertThat(timing.stretch()).isEqualTo(new Instance.Stretch(30, 55));
      assertThat(timing.meals()).containsExactly(new Instance.Meal(65, 85, 30));
    }

    @Test
    void of_a_meal_that_meet_no_cell_make_the_grid_finer() {
      Timing timing = of(brief(180).meal(meal(61, 63, 30)));

      assertThat(timing.grid()).isEqualTo(2);
      assertThat(timing.meals()).containsExactly(new Instance.Meal(62, 62, 30));
    }

    @Test
    void of_a_meal_go_no_further_than_the_cap() {
      assertThat(of(brief(93).meal(meal(60, 300, 30))).meals())
          .containsExactly(new Instance.Meal(60, 90, 30));
    }
  }

  private static Timing of(BriefBuilder brief) {
    return Timing.of(brief.build());
  }

  private static BriefBuilder pinned(BriefBuilder brief, int at) {
    return brief.wishes(wishes(new Wishes.Pin("dots", new Moment.After(minutes(at)))));
  }

  private static Wishes wishes(Wishes.Pin pin) {
    return new Wishes(Set.of(), Set.of(), List.of(pin), Set.of());
  }

  private static OwnItem talk(int length, Optional<Moment> at) {
    return new OwnItem(
        "guest-talk", "A guest speaks", minutes(length), Optional.empty(), at, 2, Format.PLENARY);
  }

  private static Rhythm rhythm(int shortest, int longest, int pause) {
    return new Rhythm(minutes(shortest), minutes(longest), minutes(pause));
  }

  private static Meal meal(int from, int to, int length) {
    return new Meal(minutes(from), minutes(to), minutes(length));
  }
}
