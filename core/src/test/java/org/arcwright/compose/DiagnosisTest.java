package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** Why nothing fits, as far as it can be seen without another search. */
class DiagnosisTest {

  @Test
  void a_wish_that_the_brief_itself_rules_out() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();
    Wishes wishes = new Wishes(Set.of("deep"), Set.of(), List.of(), Set.of());

    assertThat(reasons(brief(90).wishes(wishes), Sample.catalog(deep)))
        .containsExactly(
            "\"The deep\" must appear, but cannot be used: too personal for this group: openness 3,"
                + " at most 1 here.");
  }

  @Test
  void an_own_item_that_is_longer_than_people_work_without_a_break() {
    OwnItem talk =
        new OwnItem(
            "talk",
            "A guest speaks",
            minutes(75),
            Optional.empty(),
            Optional.empty(),
            2,
            Format.PLENARY);

    assertThat(reasons(brief(240).ownItem(talk), Sample.catalog()))
        .contains(
            "\"A guest speaks\" must appear, but cannot be used: too long: takes 75 minutes; without a break"
                + " people work at most 60.");
  }

  @Test
  void a_phase_without_any_exercise_and_why_most_of_them_are_left_out() {
    List<Exercise> exercises = new ArrayList<>(without(e -> e.kind() == Kind.DECISION));
    exercises.add(decision("show-of-hands").people(20, 40).build());
    exercises.add(decision("long-debate").people(12, 40).build());
    exercises.add(decision("secrets").openness(3).build());

    assertThat(reasons(brief(90), Sample.only(exercises)))
        .containsExactly(
            "\"To decide\" needs at least one exercise, and none is left; 3 of its kind are"
                + " left out, 2 of them for this reason: not for 8 people.");
  }

  @Test
  void one_cause_for_all_is_said_once() {
    List<Exercise> exercises =
        List.of(
            decision("show-of-hands").people(20, 40).build(),
            decision("long-debate").people(12, 40).build());

    assertThat(reasons(brief(90), Sample.only(exercises)))
        .containsExactly("All 2 exercises are left out for the same reason: not for 8 people.");
  }

  @Test
  void a_phase_for_which_the_catalog_has_nothing() {
    assertThat(reasons(brief(90), Sample.only(without(e -> e.kind() == Kind.ICEBREAKER))))
        .first()
        .isEqualTo(
            "\"To open\" needs at least one exercise, and none is left; add some to the catalog.");
  }

  @Test
  void a_work_product_that_nothing_leaves() {
    List<Exercise> exercises = new ArrayList<>(without(e -> e.kind() == Kind.REFLECTION));
    exercises.add(SampleExercise.of("stars", Kind.REFLECTION, 5, 5, 5, "feedback").build());

    assertThat(reasons(brief(90), Sample.only(exercises)))
        .containsExactly(
            "\"To close\" must end with the takeaways, and no exercise up to there leaves that.");
  }

  /** The shortest are 5 + 10 + 10 + 10 + 5 = 40 minutes; 15 % of it are 6, rounded up to 10. */
  @Test
  void a_cap_under_the_shortest_agenda_with_both_numbers() {
    assertThat(reasons(brief(45), Sample.catalog()))
        .containsExactly(
            "The shortest agenda takes at least 50 minutes (exercises 40, breaks 0, buffer 10); the"
                + " time at hand is 45.");
    assertThat(Composer.of(Sample.catalog()).compose(brief(50).build(), Budget.USUAL))
        .isInstanceOf(Composition.Composed.class);
  }

  @Test
  void a_cap_under_what_it_takes_to_leave_the_work_products() {
    List<Exercise> exercises = new ArrayList<>(without(e -> e.kind() == Kind.REFLECTION));
    exercises.add(SampleExercise.of("stars", Kind.REFLECTION, 5, 5, 5, "feedback").build());
    exercises.add(SampleExercise.of("letters", Kind.REFLECTION, 20, 20, 20, "takeaways").build());

    assertThat(reasons(brief(60), Sample.only(exercises)))
        .containsExactly(
            "The shortest agenda takes at least 65 minutes (exercises 55, breaks 0, buffer 10); the"
                + " time at hand is 60.");
  }

  @Test
  void stretches_too_short_for_any_agenda_without_breaks() {
    BriefBuilder unbroken = brief(120).rhythm(new Rhythm(minutes(0), minutes(35), minutes(0)));

    assertThat(reasons(unbroken, Sample.catalog()))
        .containsExactly(
            "Exercises take at least 40 minutes, and without any breaks people work at most 35."
                + " Allow breaks.");
  }

  @Test
  void pins_that_are_in_each_other_s_way_told_by_the_clock() {
    Wishes wishes =
        new Wishes(
            Set.of(),
            Set.of(),
            List.of(pin("sorting", 50), pin("dots", 40), pin("carousel", 30)),
            Set.of());
    ZonedDateTime start = ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon"));

    assertThat(reasons(brief(180).start(start).wishes(wishes), Sample.catalog()))
        .containsExactly(
            "\"The carousel\" at 09:30 lasts at least 20 minutes, so \"The dots\" cannot start at"
                + " 09:40.");
  }

  @Test
  void a_pin_that_would_end_after_the_workshop() {
    Wishes wishes = new Wishes(Set.of(), Set.of(), List.of(pin("pair-talk", 85)), Set.of());

    assertThat(reasons(brief(90).wishes(wishes), Sample.catalog()))
        .containsExactly(
            "\"The pair-talk\" at minute 85 lasts at least 10 minutes and would end after the"
                + " workshop does.");
  }

  @Test
  void a_meal_so_late_that_no_exercise_can_follow() {
    assertThat(
            reasons(
                brief(180).meal(new Meal(minutes(150), minutes(170), minutes(30))),
                Sample.catalog()))
        .containsExactly(
            "The meal of 30 minutes can start at minute 150 at the earliest; after it must come an"
                + " exercise, and the workshop ends at minute 180.");
  }

  @Test
  void all_together_when_each_could_be_had_by_itself() {
    Wishes wishes = new Wishes(Set.of(), Set.of(), List.of(pin("one-word", 10)), Set.of());

    assertThat(reasons(brief(90).wishes(wishes), Sample.catalog()))
        .singleElement()
        .asString()
        .startsWith("Each part can be had by itself, but not all together");
  }

  private static Wishes.Pin pin(String exercise, int at) {
    return new Wishes.Pin(exercise, new Moment.After(minutes(at)));
  }

  private static SampleExercise decision(String id) {
    return SampleExercise.of(id, Kind.DECISION, 5, 5, 5, "decision");
  }

  private static List<Exercise> without(Predicate<Exercise> which) {
    return Sample.exercises().stream().filter(which.negate()).toList();
  }

  private static List<String> reasons(BriefBuilder builder, Catalog catalog) {
    Brief brief = builder.build();
    return ((NothingFits) Composer.of(catalog).compose(brief, Budget.USUAL)).reasons();
  }
}
