package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.Review.Remark;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** What a facilitator reads about an agenda of her own. */
class ReviewTest {
  private static final ZonedDateTime NINE =
      ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon"));
  private final List<AgendaItem> items = new ArrayList<>();
  private Duration next = Duration.ZERO;

  @Test
  void nothing_when_all_is_well() {
    Review review = review(usual(), brief(95));

    assertThat(review.remarks()).isEmpty();
    assertThat(review.fits()).isTrue();
    assertThat(review.figures().longestStretch()).isEqualTo(minutes(40));
    assertThat(review.figures().cost().pauses()).isEqualTo(100);
  }

  @Test
  void times_are_told_by_the_clock_once_the_brief_says_when_it_starts() {
    List<AgendaItem> odd = add("race", "open", 10).add("carousel", "explore", 60).items;

    assertThat(texts(odd, brief(95).start(NINE)))
        .contains(
            "\"The carousel\" at 09:10 lasts 60 minutes; for 8 people it takes 20, 25, 30, 35 or"
                + " 40.");
    assertThat(texts(odd, brief(95)))
        .contains(
            "\"The carousel\" at minute 10 lasts 60 minutes; for 8 people it takes 20, 25, 30, 35"
                + " or 40.");
  }

  @Test
  void remarks_know_their_rule_and_their_time() {
    List<AgendaItem> odd = add("race", "open", 10).add("carousel", "explore", 60).items;

    assertThat(review(odd, brief(95)).remarks())
        .extracting(Remark::rule, Remark::at)
        .contains(tuple(2, minutes(10)));
  }

  @Test
  void an_exercise_that_nobody_knows() {
    assertThat(texts(add("rase", "open", 10).items, brief(95)))
        .contains(
            "\"rase\" at minute 0 is neither in the catalog nor among the brief's own items;"
                + " perhaps race.");
    assertThat(texts(add("quite-another-thing", "open", 10).items, brief(95)))
        .contains(
            "\"quite-another-thing\" at minute 10 is neither in the catalog nor among the brief's"
                + " own items.");
  }

  @Test
  void an_exercise_that_does_not_go_with_the_brief() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();

    assertThat(texts(add("deep", "open", 5).items, brief(95), deep))
        .contains(
            "\"The deep\" at minute 0 does not go with this brief: too personal for this group:"
                + " openness 3, at most 1 here.");
  }

  @Test
  void an_exercise_that_comes_twice() {
    assertThat(texts(add("race", "open", 10).add("race", "open", 10).items, brief(95)))
        .contains(
            "\"The race\" at minute 10 was there before, at minute 0; take another exercise.");
  }

  @Test
  void a_phase_that_the_goal_does_not_have() {
    assertThat(texts(add("race", "warm-up", 10).items, brief(95)))
        .contains(
            "\"The race\" at minute 0 stands in the phase \"warm-up\", which this goal does not"
                + " have; its phases are open, explore, narrow, decide, close.");
  }

  @Test
  void a_phase_in_the_wrong_order_with_a_wrong_kind_or_too_much_in_it() {
    Set<String> texts =
        texts(
            add("dots", "narrow", 20)
                .add("carousel", "explore", 40)
                .add("race", "decide", 15)
                .add("one-word", "close", 5)
                .add("pair-talk", "close", 20)
                .items,
            brief(120));

    assertThat(texts)
        .contains(
            "\"The carousel\" at minute 20 belongs to \"To explore\", but \"To narrow\" has begun"
                + " before it; move it forward.",
            "\"The race\" at minute 60 is of the kind icebreaker; \"To decide\" takes decision.",
            "\"To open\" has no exercise; right is from 1 to 2.",
            "\"To close\" has 2 exercises; right is 1.",
            "\"To close\" takes 25 minutes in all; right is from 5 to 20.");
  }

  @Test
  void an_own_item_in_another_phase_than_the_brief_says() {
    OwnItem talk = talk("explore");

    assertThat(texts(add("talk", "open", 20).items, brief(120).ownItem(talk)))
        .contains(
            "\"A guest speaks\" at minute 0 belongs to another phase than \"To open\", says the brief.");
  }

  @Test
  void a_work_product_that_is_missing() {
    assertThat(texts(add("race", "open", 10).add("dots", "narrow", 15).items, brief(95)))
        .contains(
            "\"The dots\" at minute 10 needs the idea pool, which nothing before it leaves; put an"
                + " exercise that does before it.",
            "\"To explore\" ends at minute 10 without the idea pool; put an exercise that leaves it"
                + " in or before that phase.");
  }

  @Test
  void gaps_and_breaks_that_are_out_of_place() {
    items.add(new AgendaItem.Pause(minutes(5), minutes(10), false));
    next = minutes(15);
    add("race", "open", 10).pause(7).pause(10);

    assertThat(texts(items, brief(95)))
        .contains(
            "The first item starts at minute 5; start it right at the beginning, minute 0.",
            "It opens with a break; open with an exercise.",
            "The break at minute 25 lasts 7 minutes; this brief wants 10.",
            "The break at minute 32 follows right after a break; put an exercise between the two.",
            "It closes with a break; leave that out, or close with an exercise.");
  }

  @Test
  void a_gap_in_the_middle() {
    add("race", "open", 10);
    next = minutes(15);

    assertThat(texts(add("carousel", "explore", 30).items, brief(95)))
        .contains(
            "What starts at minute 15 should start at minute 10, where the item before it ends.");
  }

  @Test
  void more_than_the_time_at_hand() {
    assertThat(texts(usual(), brief(85)))
        .contains(
            "Exercises of 70, breaks of 10 and a buffer of 15 minutes make 95; the time at hand is"
                + " 85. Shorten or leave out something.");
  }

  @Test
  void a_meal_that_is_missing_or_elsewhere() {
    Meal lunch = new Meal(minutes(30), minutes(60), minutes(45));

    assertThat(texts(add("race", "open", 10).items, brief(180).meal(lunch)))
        .contains("The meal of 45 minutes is missing; start it between minute 30 and minute 60.");
    assertThat(texts(pause(45).add("carousel", "explore", 30).items, brief(180).meal(lunch)))
        .contains(
            "The meal of 45 minutes starts at minute 10; it should start between minute 30 and"
                + " minute 60.");
  }

  @Test
  void a_wish_that_is_not_kept() {
    Wishes wishes =
        new Wishes(
            Set.of("pair-talk"),
            Set.of(),
            List.of(new Wishes.Pin("carousel", new Moment.After(minutes(20)))),
            Set.of());

    assertThat(texts(usual(), brief(95).wishes(wishes)))
        .contains(
            "\"The pair-talk\" is wished for and missing; put it in.",
            "\"The carousel\" starts at minute 10; the brief wants it at minute 20.");
  }

  @Test
  void a_wish_that_could_not_be_kept() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();
    Wishes wishes = new Wishes(Set.of("deep"), Set.of(), List.of(), Set.of());

    assertThat(texts(usual(), brief(95).wishes(wishes), deep))
        .contains(
            "\"The deep\" is wished for and missing; put it in, or mend the brief, for it cannot be"
                + " used: too personal for this group: openness 3, at most 1 here.");
  }

  private List<AgendaItem> usual() {
    return add("race", "open", 10)
        .add("carousel", "explore", 30)
        .pause(10)
        .add("dots", "narrow", 15)
        .add("ballot", "decide", 10)
        .add("one-word", "close", 5)
        .items;
  }

  private ReviewTest add(String exercise, String phase, int length) {
    items.add(
        new AgendaItem.Activity(
            exercise,
            exercise,
            Optional.empty(),
            phase,
            next,
            minutes(length),
            Format.PLENARY,
            30));
    next = next.plusMinutes(length);
    return this;
  }

  private ReviewTest pause(int length) {
    items.add(new AgendaItem.Pause(next, minutes(length), false));
    next = next.plusMinutes(length);
    return this;
  }

  private static OwnItem talk(String phase) {
    return new OwnItem(
        "talk",
        "A guest speaks",
        minutes(20),
        Optional.of(phase),
        Optional.empty(),
        2,
        Format.PLENARY);
  }

  private static Set<String> texts(List<AgendaItem> items, BriefBuilder brief, Exercise... more) {
    Set<String> texts = new TreeSet<>();
    review(items, brief, more).remarks().forEach(remark -> texts.add(remark.text()));
    return texts;
  }

  private static Review review(List<AgendaItem> items, BriefBuilder builder, Exercise... more) {
    Brief brief = builder.build();
    Figures none =
        new Figures(Map.of(), 0, Duration.ZERO, new Figures.Cost(0, 0, 0, 0, 0, 0, 0, 0));
    Agenda agenda =
        new Agenda(
            "By hand",
            brief.goal(),
            brief.mode(),
            8,
            brief.cap(),
            brief.start(),
            List.of(),
            items,
            Duration.ZERO,
            List.of(),
            none);
    return Composer.of(Sample.catalog(more)).check(agenda, brief);
  }
}
