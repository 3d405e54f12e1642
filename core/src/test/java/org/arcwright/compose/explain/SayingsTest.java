package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a facilitator reads of a wish, and of what is given up about it. */
class SayingsTest {
  private static final BriefBuilder SOME_TIME = Sample.brief(180);
  private static final BriefBuilder FROM_NINE =
      Sample.brief(180).start(ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon")));

  @ParameterizedTest
  @CsvSource({
    "5, 5 min",
    "59, 59 min",
    "60, 1 h",
    "61, 1 h 1 min",
    "160, 2 h 40 min",
    "1440, 24 h",
  })
  void hours_and_minutes(int minutes, String text) {
    assertThat(Sayings.time(minutes(minutes))).isEqualTo(text);
  }

  @Nested
  class A_wish {
    @Test
    void about_time() {
      assertThat(asked(new Wish.Cap(minutes(180))))
          .isEqualTo("3 h in all, breaks and buffer included");
      assertThat(asked(new Wish.Stretch(minutes(90))))
          .isEqualTo("no more than 1 h 30 min of work without a break");
      assertThat(asked(new Wish.Pause(minutes(15)))).isEqualTo("breaks of 15 min");
      assertThat(asked(new Wish.Pause(minutes(0)))).isEqualTo("no breaks");
      assertThat(asked(new Wish.Buffer(15))).isEqualTo("15 % of the work kept free at the close");
    }

    @Test
    void about_an_exercise() {
      assertThat(asked(new Wish.Include("dots"))).isEqualTo("\"The dots\" is in");
      assertThat(asked(new Wish.LeaveOut("dots"))).isEqualTo("\"The dots\" stays out");
      assertThat(asked(new Wish.Include("gone-since"))).isEqualTo("\"gone-since\" is in");
    }

    @Test
    void about_a_start_by_the_clock_if_there_is_one() {
      assertThat(asked(pinned(60))).isEqualTo("\"The dots\" starts 1 h after the start");
      assertThat(sayings(FROM_NINE).asked(pinned(5))).isEqualTo("\"The dots\" starts at 09:05");
      assertThat(sayings(FROM_NINE).asked(pinned(100))).isEqualTo("\"The dots\" starts at 10:40");
      assertThat(sayings(FROM_NINE).asked(pinned(60))).isEqualTo("\"The dots\" starts at 10:00");
    }

    @Test
    void about_an_own_item() {
      assertThat(asked(own(Optional.empty(), Optional.empty())))
          .isEqualTo("\"A guest speaks\" (20 min) is in");
      assertThat(asked(own(Optional.of("decide"), Optional.of(30))))
          .isEqualTo("\"A guest speaks\" (20 min) is in, in \"To decide\", 30 min after the start");
    }

    @Test
    void about_a_meal() {
      assertThat(asked(meal(60, 90, 45)))
          .isEqualTo("a meal of 45 min that starts between 1 h and 1 h 30 min");
      assertThat(asked(meal(60, 60, 45)))
          .isEqualTo("a meal of 45 min that starts 1 h after the start");
      assertThat(sayings(FROM_NINE).asked(meal(60, 60, 45)))
          .isEqualTo("a meal of 45 min that starts at 10:00");
    }

    @Test
    void about_tools_and_work_products() {
      assertThat(asked(new Wish.Tools(ids("call"))))
          .isEqualTo("no other tools than the usual ones: voice and video call");
      assertThat(
              sayings(Sample.brief(180).tools(List.of("call")))
                  .asked(new Wish.Tools(ids("call", "music", "wall"))))
          .isEqualTo("no other tools than these: voice and video call, shared music and free wall");
      assertThat(asked(new Wish.Given(ids("feedback", "idea-pool"))))
          .isEqualTo(
              "nothing is there beforehand but the feedback, the idea pool and the question");
    }

    @Test
    void about_people() {
      assertThat(asked(new Wish.People(8))).isEqualTo("8 people, all together");
      assertThat(asked(new Wish.People(1))).isEqualTo("1 person alone");
      assertThat(asked(new Wish.Openness(0))).isEqualTo("nothing personal (openness 0)");
      assertThat(asked(new Wish.Openness(2))).isEqualTo("nothing more personal than openness 2");
    }

    @Test
    void about_a_rule() {
      assertThat(asked(new Wish.Rule("no songs"))).isEqualTo("the rule \"no songs\"");
    }
  }

  @Nested
  class What_is_given_up {
    @Test
    void about_time() {
      assertThat(instead(new Wish.Cap(minutes(180)), new Wish.Cap(minutes(215))))
          .isEqualTo("35 min more: 3 h 35 min in all");
      assertThat(instead(new Wish.Stretch(minutes(60)), new Wish.Stretch(minutes(75))))
          .isEqualTo("let people work up to 1 h 15 min without a break instead of 1 h");
      assertThat(instead(new Wish.Pause(minutes(15)), new Wish.Pause(minutes(10))))
          .isEqualTo("breaks of 10 min instead of 15 min");
      assertThat(instead(new Wish.Pause(minutes(0)), new Wish.Pause(minutes(10))))
          .isEqualTo("allow breaks, of 10 min");
      assertThat(instead(new Wish.Buffer(15), new Wish.Buffer(12)))
          .isEqualTo("keep 12 % free at the close instead of 15 %");
      assertThat(instead(new Wish.Buffer(15), new Wish.Buffer(0)))
          .isEqualTo("keep nothing free at the close instead of 15 %");
    }

    @Test
    void about_a_start() {
      assertThat(instead(pinned(60), pinned(50)))
          .isEqualTo("start \"The dots\" 50 min after the start instead of 1 h");
      assertThat(sayings(FROM_NINE).givenUp(pinned(60), Optional.of(pinned(50))))
          .isEqualTo("start \"The dots\" at 09:50 instead of 10:00");
    }

    @Test
    void about_an_own_item() {
      Wish talk = own(Optional.of("decide"), Optional.of(30));

      assertThat(instead(talk, own(Optional.empty(), Optional.of(30))))
          .isEqualTo("let \"A guest speaks\" stand in any phase");
      assertThat(instead(talk, own(Optional.of("decide"), Optional.of(40))))
          .isEqualTo("start \"A guest speaks\" 40 min after the start instead of 30 min");
    }

    @Test
    void about_a_meal() {
      assertThat(instead(meal(60, 90, 45), meal(50, 90, 45)))
          .isEqualTo(
              "let the meal start between 50 min and 1 h 30 min instead of between 1 h and 1 h 30"
                  + " min");
      assertThat(instead(meal(60, 90, 45), meal(60, 90, 40)))
          .isEqualTo("a meal of 40 min instead of 45 min");
    }

    @Test
    void about_tools_work_products_and_people() {
      assertThat(instead(new Wish.Tools(ids("call")), new Wish.Tools(ids("call", "music"))))
          .isEqualTo("have at hand as well: shared music");
      assertThat(
              instead(new Wish.Given(ids("question")), new Wish.Given(ids("question", "feedback"))))
          .isEqualTo("bring along the feedback");
      assertThat(instead(new Wish.Openness(1), new Wish.Openness(2)))
          .isEqualTo("let it get more personal: openness 2 instead of 1");
      assertThat(instead(new Wish.People(8), new Wish.People(1)))
          .isEqualTo("1 person instead of 8");
    }

    @Test
    void altogether() {
      assertThat(struck(new Wish.LeaveOut("dots"))).isEqualTo("allow \"The dots\"");
      assertThat(struck(new Wish.Include("dots"))).isEqualTo("do without \"The dots\"");
      assertThat(struck(pinned(60))).isEqualTo("do without \"The dots\"");
      assertThat(struck(own(Optional.empty(), Optional.empty())))
          .isEqualTo("do without \"A guest speaks\"");
      assertThat(struck(new Wish.Rule("no songs"))).isEqualTo("set aside the rule \"no songs\"");
    }

    @Test
    void a_meal_is_named_where_there_are_two() {
      BriefBuilder one = Sample.brief(180).meal(new Meal(minutes(60), minutes(90), minutes(30)));
      BriefBuilder two =
          Sample.brief(480)
              .meal(new Meal(minutes(60), minutes(90), minutes(30)))
              .meal(new Meal(minutes(300), minutes(330), minutes(30)));

      assertThat(sayings(one).givenUp(meal(60, 90, 30), Optional.empty()))
          .isEqualTo("do without the meal");
      assertThat(sayings(two).givenUp(meal(60, 90, 30), Optional.empty()))
          .isEqualTo("do without the meal that starts between 1 h and 1 h 30 min");
    }

    @Test
    void is_a_wish_of_the_same_kind() {
      assertThatThrownBy(() -> instead(new Wish.People(8), new Wish.Buffer(8)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("is not of the kind of");
    }
  }

  private static Sayings sayings(BriefBuilder brief) {
    return new Sayings(brief.build(), Sample.catalog());
  }

  private static String asked(Wish wish) {
    return sayings(SOME_TIME).asked(wish);
  }

  private static String instead(Wish wish, Wish other) {
    return sayings(SOME_TIME).givenUp(wish, Optional.of(other));
  }

  private static String struck(Wish wish) {
    return sayings(SOME_TIME).givenUp(wish, Optional.empty());
  }

  private static Set<String> ids(String... ids) {
    return new LinkedHashSet<>(List.of(ids));
  }

  private static Wish pinned(int minute) {
    return new Wish.Pinned(new Wishes.Pin("dots", new Moment.After(minutes(minute))));
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
