package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** In which smaller measure each wish can be asked for, the least given up first. */
class StepsTest {
  private static final Exercise SONG =
      SampleExercise.of("song", Kind.REFLECTION, 5, 5, 5, "takeaways")
          .in(Mode.REMOTE, 3, "call", "music")
          .in(Mode.IN_PERSON, 3, "wall")
          .build();
  private static final Catalog CATALOG = Sample.catalog(SONG);

  @Nested
  class More_time {
    @Test
    void is_asked_for_in_steps_of_five_minutes_up_to_a_long_day() {
      assertThat(ways(brief(240), new Wish.Cap(minutes(240)))).containsExactly(caps(245, 720));
      assertThat(ways(brief(242), new Wish.Cap(minutes(242)))).containsExactly(caps(245, 720));
    }

    @Test
    void goes_up_to_twice_of_what_is_longer_than_half_a_long_day() {
      assertThat(ways(brief(400), new Wish.Cap(minutes(400)))).containsExactly(caps(405, 800));
    }

    @Test
    void ends_with_what_can_be_planned() {
      assertThat(ways(brief(2000), new Wish.Cap(minutes(2000)))).containsExactly(caps(2005, 2400));
      assertThat(ways(brief(2400), new Wish.Cap(minutes(2400)))).isEmpty();
      // by the minute a plan ends at 511 minutes
      assertThat(new Steps(brief(240).build(), CATALOG, 1).of(new Wish.Cap(minutes(240))))
          .containsExactly(caps(245, 510));
    }

    private List<Wish> caps(int from, int to) {
      return byFive(from, to, n -> new Wish.Cap(minutes(n)));
    }
  }

  @Nested
  class A_longer_stretch {
    @Test
    void is_two_hours_at_the_most() {
      assertThat(ways(brief(240), new Wish.Stretch(minutes(60))))
          .containsExactly(stretches(65, 120));
      assertThat(ways(brief(240), new Wish.Stretch(minutes(120)))).isEmpty();
    }

    @Test
    void is_as_long_as_an_own_item_if_that_is_longer() {
      assertThat(ways(brief(240).ownItem(talk(130)), new Wish.Stretch(minutes(60))))
          .containsExactly(stretches(65, 130));
      assertThat(ways(brief(240).ownItem(talk(131)), new Wish.Stretch(minutes(60))))
          .containsExactly(stretches(65, 135));
    }

    @Test
    void by_the_minute_ends_at_an_hour() {
      assertThat(new Steps(brief(240).build(), CATALOG, 1).of(new Wish.Stretch(minutes(50))))
          .containsExactly(stretches(55, 60));
    }

    private List<Wish> stretches(int from, int to) {
      return byFive(from, to, n -> new Wish.Stretch(minutes(n)));
    }
  }

  @Nested
  class Breaks {
    @Test
    void become_shorter_down_to_five_minutes() {
      assertThat(ways(brief(240), pause(15))).containsExactly(List.of(pause(10), pause(5)));
      assertThat(ways(brief(240), pause(12))).containsExactly(List.of(pause(10), pause(5)));
      assertThat(ways(brief(240), pause(5))).isEmpty();
    }

    @Test
    void come_in_where_there_were_to_be_none_the_usual_ones_first() {
      assertThat(ways(brief(240), pause(0))).containsExactly(List.of(pause(10), pause(5)));
      assertThat(ways(Sample.brief(Mode.IN_PERSON, 8, 240), pause(0)))
          .containsExactly(List.of(pause(15), pause(10), pause(5)));
    }

    private Wish pause(int length) {
      return new Wish.Pause(minutes(length));
    }
  }

  @Test
  void less_is_kept_free_down_to_nothing() {
    assertThat(ways(brief(240), new Wish.Buffer(3)))
        .containsExactly(List.of(new Wish.Buffer(2), new Wish.Buffer(1), new Wish.Buffer(0)));
    assertThat(ways(brief(240), new Wish.Buffer(0))).isEmpty();
  }

  @Test
  void more_personal_by_a_level_at_a_time() {
    assertThat(ways(brief(240), new Wish.Openness(1)))
        .containsExactly(List.of(new Wish.Openness(2), new Wish.Openness(3)));
    assertThat(ways(brief(240), new Wish.Openness(3))).isEmpty();
  }

  @Test
  void fewer_people_or_another_group_joins() {
    assertThat(ways(brief(240), new Wish.People(3)))
        .containsExactly(
            List.of(new Wish.People(2), new Wish.People(1)),
            IntStream.rangeClosed(4, 16).<Wish>mapToObj(Wish.People::new).toList());
    assertThat(ways(brief(240), new Wish.People(1)))
        .containsExactly(IntStream.rangeClosed(2, 12).<Wish>mapToObj(Wish.People::new).toList());
    assertThat(ways(brief(240), new Wish.People(998)).get(1))
        .containsExactly(new Wish.People(999), new Wish.People(1000));
  }

  @Test
  void other_starts_within_the_cap_the_nearest_first_and_the_later_of_two() {
    assertThat(ways(brief(40), pinned(25)))
        .containsExactly(
            List.of(
                pinned(30), pinned(20), pinned(35), pinned(15), pinned(10), pinned(5), pinned(0)));
  }

  @Test
  void other_starts_are_told_as_the_brief_tells_them() {
    BriefBuilder nine =
        brief(15).start(ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon")));

    assertThat(ways(nine, pinnedAt(9, 5)))
        .containsExactly(List.of(pinnedAt(9, 10), pinnedAt(9, 0)));
    assertThat(ways(nine, pinned(5))).containsExactly(List.of(pinned(10), pinned(0)));
  }

  @Test
  void an_own_item_starts_at_another_time_or_stands_in_any_phase() {
    assertThat(ways(brief(15), own(Optional.of("open"), Optional.of(5))))
        .containsExactly(
            List.of(
                own(Optional.of("open"), Optional.of(10)),
                own(Optional.of("open"), Optional.of(0))),
            List.of(own(Optional.empty(), Optional.of(5))));
    assertThat(ways(brief(15), own(Optional.empty(), Optional.empty()))).isEmpty();
  }

  /** After a meal comes an exercise, of five minutes at the least. */
  @Test
  void a_meal_is_shorter_earlier_or_later() {
    assertThat(ways(brief(180), meal(15, 100, 30)))
        .containsExactly(
            List.of(meal(15, 100, 25), meal(15, 100, 20), meal(15, 100, 15)),
            List.of(meal(10, 100, 30), meal(5, 100, 30), meal(0, 100, 30)),
            byFive(105, 145, n -> meal(15, n, 30)));
  }

  @Test
  void one_tool_more_of_those_that_exercises_use_in_this_mode() {
    assertThat(ways(brief(240), new Wish.Tools(Set.of("breakouts"))))
        .containsExactly(
            List.of(new Wish.Tools(Set.of("breakouts", "call"))),
            List.of(new Wish.Tools(Set.of("breakouts", "music"))));
    assertThat(ways(brief(240), new Wish.Tools(Set.of("call", "music")))).isEmpty();
  }

  @Test
  void without_tools_named_those_usual_in_this_mode_are_at_hand() {
    assertThat(steps(brief(240)).atHand()).containsExactlyInAnyOrder("call", "breakouts");
    assertThat(steps(Sample.brief(Mode.IN_PERSON, 8, 240)).atHand()).containsExactly("wall");
    assertThat(steps(brief(240).tools(List.of("music"))).atHand()).containsExactly("music");
  }

  @Test
  void one_work_product_more_but_not_what_the_goal_is_about() {
    assertThat(ways(brief(240), new Wish.Given(Set.of("arrival"))))
        .containsExactly(
            List.of(new Wish.Given(Set.of("arrival", "feedback"))),
            List.of(new Wish.Given(Set.of("arrival", "idea-pool"))),
            List.of(new Wish.Given(Set.of("arrival", "introductions"))),
            List.of(new Wish.Given(Set.of("arrival", "shortlist"))));
  }

  @Nested
  class Given_up_altogether {
    @Test
    void means_struck_where_a_brief_can_do_without() {
      List<Wish> wishes =
          List.of(
              new Wish.Include("dots"),
              new Wish.LeaveOut("dots"),
              pinned(5),
              own(Optional.empty(), Optional.empty()),
              new Wish.Rule("no songs"),
              meal(15, 100, 30));

      for (Wish wish : wishes) {
        assertThat(steps(brief(180)).givenUp(wish)).containsExactly(Optional.empty());
        assertThat(steps(brief(180)).canBeLoosened(wish)).isTrue();
      }
    }

    @Test
    void means_the_last_step_of_a_figure() {
      assertThat(givenUp(new Wish.Cap(minutes(240)))).containsExactly(new Wish.Cap(minutes(720)));
      assertThat(givenUp(new Wish.Openness(0))).containsExactly(new Wish.Openness(3));
      assertThat(givenUp(new Wish.Buffer(15))).containsExactly(new Wish.Buffer(0));
    }

    @Test
    void means_every_tool_and_work_product_there_is() {
      assertThat(givenUp(new Wish.Tools(Set.of("breakouts"))))
          .containsExactly(new Wish.Tools(Set.of("breakouts", "call", "music")));
      assertThat(givenUp(new Wish.Given(Set.of())))
          .containsExactly(
              new Wish.Given(
                  Set.of("arrival", "feedback", "idea-pool", "introductions", "shortlist")));
    }

    @Test
    void means_half_the_people_or_a_group_of_a_handy_size() {
      assertThat(givenUp(new Wish.People(60))).containsExactly(people(30, 12, 8, 20, 6));
      assertThat(givenUp(new Wish.People(8))).containsExactly(people(4, 12, 20, 6));
      assertThat(givenUp(new Wish.People(1))).containsExactly(people(12, 8, 20, 6));
    }

    private Wish[] people(int... counts) {
      return IntStream.of(counts).mapToObj(Wish.People::new).toArray(Wish[]::new);
    }

    private List<Wish> givenUp(Wish wish) {
      return steps(brief(240)).givenUp(wish).stream().map(Optional::orElseThrow).toList();
    }
  }

  @Test
  void what_cannot_be_had_in_a_smaller_measure_is_no_wish_to_give_up() {
    assertThat(steps(brief(240)).canBeLoosened(new Wish.Buffer(1))).isTrue();
    assertThat(steps(brief(240)).canBeLoosened(new Wish.Buffer(0))).isFalse();
    assertThat(steps(brief(240)).canBeLoosened(new Wish.Tools(Set.of("call", "music")))).isFalse();
  }

  private static List<List<Wish>> ways(BriefBuilder brief, Wish wish) {
    return steps(brief).of(wish);
  }

  private static Steps steps(BriefBuilder brief) {
    return new Steps(brief.build(), CATALOG, 5);
  }

  private static List<Wish> byFive(int from, int to, IntFunction<Wish> wish) {
    List<Wish> steps = new ArrayList<>();
    for (int n = from; n <= to; n += 5) {
      steps.add(wish.apply(n));
    }
    return steps;
  }

  private static Wish pinned(int minute) {
    return new Wish.Pinned(new Wishes.Pin("dots", new Moment.After(minutes(minute))));
  }

  private static Wish pinnedAt(int hour, int minute) {
    return new Wish.Pinned(new Wishes.Pin("dots", new Moment.Clock(LocalTime.of(hour, minute))));
  }

  private static OwnItem talk(int length) {
    return new OwnItem(
        "talk",
        "A guest speaks",
        minutes(length),
        Optional.empty(),
        Optional.empty(),
        2,
        Format.PLENARY);
  }

  private static Wish own(Optional<String> phase, Optional<Integer> minute) {
    Optional<Moment> at = minute.map(m -> new Moment.After(minutes(m)));
    return new Wish.Own(
        new OwnItem("talk", "A guest speaks", minutes(20), phase, at, 2, Format.PLENARY));
  }

  private static Wish meal(int earliest, int latest, int length) {
    return new Wish.Meal(new Meal(minutes(earliest), minutes(latest), minutes(length)));
  }
}
