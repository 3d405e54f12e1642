package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** What clashes in some briefs, and the ways out, in a facilitator's words. */
class ClashTest {
  private static final ZonedDateTime NINE =
      ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon"));

  /** The shortest take 5 + 10 + 10 + 10 + 5 minutes; 15 % of them are 6, or 10 on the grid. */
  @Test
  void too_little_time() {
    Clash clash = clash(brief(45), Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly(
            "45 min in all, breaks and buffer included", "15 % of the work kept free at the close");
    assertThat(waysOut(clash))
        .containsExactly(
            "keep 12 % free at the close instead of 15 %", "5 min more: 50 min in all");
    assertThat(clash.anyOneIsEnough()).isTrue();
    assertThat(clash.complete()).isTrue();
    assertThat(clash.waysOut().get(1).brief().cap()).isEqualTo(minutes(50));
    assertThat(clash.waysOut())
        .allSatisfy(
            way -> {
              assertThat(way.least()).isTrue();
              assertThat(way.best()).isTrue();
              assertThat(way.agenda().activities()).hasSize(5);
            });
  }

  @Test
  void an_exercise_that_is_more_personal_than_the_group() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();

    Clash clash = clash(brief(90).wishes(include("deep", "dots")), Sample.catalog(deep));

    assertThat(conflict(clash))
        .containsExactly("\"The deep\" is in", "nothing more personal than openness 1");
    assertThat(waysOut(clash))
        .containsExactly(
            "do without \"The deep\"", "let it get more personal: openness 3 instead of 1");
  }

  @Test
  void a_rule_of_the_catalog() {
    Rule rule =
        Rule.neverInARow(
            "never two silent exercises in a row",
            (exercise, people) -> exercise.format(people) == Format.SOLO);

    Clash clash =
        clash(
            brief(70)
                .rhythm(new Rhythm(minutes(20), minutes(60), minutes(0)))
                .wishes(include("silent-list", "dots")),
            Sample.catalog().withRules(rule));

    assertThat(conflict(clash))
        .containsExactly(
            "\"The silent-list\" is in",
            "\"The dots\" is in",
            "no more than 1 h of work without a break",
            "no breaks",
            "the rule \"never two silent exercises in a row\"");
    assertThat(waysOut(clash))
        .contains("set aside the rule \"never two silent exercises in a row\"")
        .hasSize(4);
  }

  @Test
  void a_tool_that_is_not_at_hand() {
    Exercise song =
        SampleExercise.of("song", Kind.REFLECTION, 5, 5, 5, "takeaways")
            .in(Mode.REMOTE, 3, "call", "music")
            .build();

    Clash usual = clash(brief(90).wishes(include("song")), Sample.catalog(song));
    Clash named =
        clash(brief(90).tools(List.of("call")).wishes(include("song")), Sample.catalog(song));

    assertThat(conflict(usual))
        .containsExactly(
            "\"The song\" is in",
            "no other tools than the usual ones: breakout rooms and voice and video call");
    assertThat(conflict(named))
        .containsExactly("\"The song\" is in", "no other tools than these: voice and video call");
    assertThat(waysOut(named))
        .containsExactly("have at hand as well: shared music", "do without \"The song\"");
  }

  /** Tools that no exercise in the agenda needs are not asked for, however many there are. */
  @Test
  void several_tools_that_are_not_at_hand() {
    Exercise song =
        SampleExercise.of("song", Kind.REFLECTION, 5, 5, 5, "takeaways")
            .in(Mode.REMOTE, 3, "call", "music")
            .build();
    Exercise other =
        SampleExercise.of("drawing", Kind.REFLECTION, 5, 5, 5, "takeaways")
            .in(Mode.REMOTE, 3, "call", "wall")
            .build();

    Clash clash =
        clash(
            brief(90).tools(List.of("breakouts")).wishes(include("song")),
            Sample.catalog(song, other));

    assertThat(waysOut(clash))
        .contains("have at hand as well: voice and video call and shared music");
    assertThat(clash.waysOut()).allMatch(WayOut::least);
  }

  @Test
  void pins_in_each_other_s_way() {
    Clash clash =
        clash(
            brief(180).start(NINE).wishes(pins(pin("carousel", 9, 40), pin("sorting", 9, 50))),
            Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly("\"The carousel\" starts at 09:40", "\"The sorting\" starts at 09:50");
    assertThat(waysOut(clash))
        .containsExactly(
            "start \"The carousel\" at 09:30 instead of 09:40",
            "start \"The sorting\" at 10:00 instead of 09:50");
  }

  @Test
  void a_guest_who_talks_longer_than_people_sit() {
    OwnItem talk = talk(70, Optional.of("open"), Optional.of(new Moment.After(minutes(30))));

    Clash clash = clash(brief(240).ownItem(talk), Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly(
            "\"A guest speaks\" (1 h 10 min) is in, in \"To open\", 30 min after the start",
            "no more than 1 h of work without a break");
    assertThat(waysOut(clash))
        .containsExactly(
            "let people work up to 1 h 10 min without a break instead of 1 h",
            "do without \"A guest speaks\"");
  }

  @Test
  void a_meal_too_late_for_anything_to_follow() {
    Clash clash =
        clash(
            brief(180).start(NINE).meal(new Meal(minutes(150), minutes(170), minutes(30))),
            Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly(
            "3 h in all, breaks and buffer included",
            "a meal of 30 min that starts between 11:30 and 11:50");
    assertThat(waysOut(clash))
        .contains("let the meal start between 11:10 and 11:50 instead of between 11:30 and 11:50");
  }

  @Test
  void no_breaks_and_too_short_a_stretch() {
    Clash clash =
        clash(brief(120).rhythm(new Rhythm(minutes(0), minutes(35), minutes(0))), Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly("no more than 35 min of work without a break", "no breaks");
    assertThat(waysOut(clash))
        .containsExactly(
            "let people work up to 40 min without a break instead of 35 min",
            "allow breaks, of 10 min");
  }

  @Test
  void all_exercises_of_a_kind_left_out() {
    Clash clash =
        clash(
            brief(90)
                .wishes(new Wishes(Set.of(), ids("ballot", "both-sides"), List.of(), Set.of())),
            Sample.catalog());

    assertThat(conflict(clash))
        .containsExactly("\"The ballot\" stays out", "\"The both-sides\" stays out");
    assertThat(waysOut(clash)).containsExactly("allow \"The ballot\"", "allow \"The both-sides\"");
  }

  @Test
  void what_an_exercise_needs_could_be_brought_along() {
    Exercise tour =
        SampleExercise.of("tour", Kind.DECISION, 10, 10, 10, "decision").needs("feedback").build();
    List<Exercise> exercises = new ArrayList<>(Sample.exercises());
    exercises.removeIf(exercise -> exercise.kind() == Kind.DECISION);
    exercises.add(tour);

    Clash clash = clash(brief(90), Sample.only(exercises));

    assertThat(conflict(clash)).containsExactly("nothing is there beforehand but the question");
    assertThat(waysOut(clash)).containsExactly("bring along the feedback");
  }

  @Test
  void more_people_than_any_exercise_serves() {
    List<Exercise> exercises =
        List.of(
            SampleExercise.of("hello", Kind.ICEBREAKER, 5, 5, 5, "arrival").people(3, 40).build(),
            SampleExercise.of("ideas", Kind.DIVERGENT, 20, 25, 40, "idea-pool").build(),
            SampleExercise.of("sort", Kind.CONVERGENT, 10, 20, 30, "shortlist").build(),
            SampleExercise.of("choose", Kind.DECISION, 10, 20, 30, "decision").build(),
            SampleExercise.of("bye", Kind.REFLECTION, 5, 10, 15, "takeaways").build());

    Clash many = clash(brief(Mode.REMOTE, 60, 90), Sample.only(exercises));
    Clash few = clash(brief(Mode.REMOTE, 1, 90), Sample.only(exercises));

    assertThat(conflict(many)).containsExactly("60 people, all together");
    assertThat(waysOut(many)).containsExactly("40 people instead of 60");
    assertThat(conflict(few)).containsExactly("1 person alone");
    assertThat(waysOut(few)).containsExactly("3 people instead of 1");
  }

  @Test
  void two_things_wrong_at_once_need_two_changes() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();

    Clash clash =
        clash(
            brief(55).bufferPercent(0).wishes(include("carousel", "sorting", "deep")),
            Sample.catalog(deep));

    assertThat(clash.conflicts()).hasSize(2);
    assertThat(clash.anyOneIsEnough()).isFalse();
    assertThat(waysOut(clash))
        .contains("5 min more: 1 h in all + do without \"The deep\"")
        .contains("do without \"The carousel\" + do without \"The deep\"");
  }

  /** Of many ways to change three things one is enough; none of the three can be spared. */
  @Test
  void three_things_wrong_at_once_need_three_changes() {
    Exercise deep =
        SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();
    Exercise song =
        SampleExercise.of("song", Kind.REFLECTION, 5, 10, 20, "takeaways")
            .in(Mode.REMOTE, 3, "call", "music")
            .build();
    Exercise vigil = SampleExercise.of("vigil", Kind.DIVERGENT, 70, 70, 70, "idea-pool").build();
    Catalog catalog = Sample.catalog(deep, song, vigil);
    Brief brief = brief(240).wishes(include("deep", "song", "vigil")).build();

    Clash clash =
        Explainer.of(catalog)
            .whyNothingFits(brief, nothingFits(brief, catalog), Budget.of(Duration.ofMinutes(5)));

    assertThat(clash.anyOneIsEnough()).isFalse();
    assertThat(clash.waysOut()).hasSize(1);
    assertThat(clash.complete()).isTrue();
    List<Loosening> changes = clash.waysOut().get(0).loosenings();
    assertThat(changes).hasSize(3);
    for (Loosening spared : changes) {
      Draft draft = Draft.of(brief);
      changes.stream()
          .filter(change -> !change.equals(spared))
          .forEach(change -> draft.change(change.wish(), change.instead()));
      nothingFits(draft.brief(), catalog);
    }
  }

  @Test
  void who_comes_is_changed_only_where_nothing_else_helps() {
    Exercise crowd =
        SampleExercise.of("crowd", Kind.DIVERGENT, 5, 5, 5, "idea-pool").people(12, 90).build();

    assertThat(waysOut(clash(brief(90).wishes(include("crowd")), Sample.catalog(crowd))))
        .containsExactly("do without \"The crowd\"");
  }

  @Test
  void what_a_wish_needs_could_be_brought_along_instead_of_giving_it_up() {
    Exercise tour =
        SampleExercise.of("tour", Kind.DECISION, 10, 10, 10, "decision").needs("feedback").build();

    Clash clash = clash(brief(90).wishes(include("tour")), Sample.catalog(tour));

    assertThat(waysOut(clash))
        .containsExactly("do without \"The tour\"", "bring along the feedback");
  }

  @Test
  void any_one_is_enough_only_if_every_wish_of_the_only_conflict_has_a_way_out_of_its_own() {
    Clash clash = clash(brief(45), Sample.catalog());
    Clash.Conflict conflict = clash.conflicts().get(0);
    Clash.Conflict first = new Clash.Conflict(conflict.wishes().subList(0, 1), true);
    List<WayOut> ways = clash.waysOut();
    WayOut both =
        new WayOut(
            List.of(ways.get(0).loosenings().get(0), ways.get(1).loosenings().get(0)),
            true,
            5,
            ways.get(0).brief(),
            ways.get(0).agenda(),
            true);

    assertThat(new Clash(List.of(conflict), ways, true).anyOneIsEnough()).isTrue();
    assertThat(new Clash(List.of(conflict), ways.subList(0, 1), true).anyOneIsEnough()).isFalse();
    assertThat(new Clash(List.of(conflict), ways.subList(1, 2), true).anyOneIsEnough()).isFalse();
    assertThat(new Clash(List.of(first), ways.subList(1, 2), true).anyOneIsEnough()).isTrue();
    assertThat(new Clash(List.of(first), ways.subList(0, 1), true).anyOneIsEnough()).isFalse();
    assertThat(new Clash(List.of(conflict), List.of(both), true).anyOneIsEnough()).isFalse();
    assertThat(new Clash(List.of(conflict, conflict), ways, true).anyOneIsEnough()).isFalse();
    assertThat(
            new Clash(List.of(new Clash.Conflict(conflict.wishes(), false)), ways, true)
                .anyOneIsEnough())
        .isFalse();
  }

  @Test
  void nothing_helps_where_the_catalog_has_nothing() {
    List<Exercise> exercises = new ArrayList<>(Sample.exercises());
    exercises.removeIf(exercise -> exercise.kind() == Kind.ICEBREAKER);

    Clash clash = clash(brief(90), Sample.only(exercises));

    assertThat(clash.conflicts())
        .singleElement()
        .satisfies(conflict -> assertThat(conflict.wishes()).isEmpty());
    assertThat(clash.waysOut()).isEmpty();
    assertThat(clash.complete()).isTrue();
  }

  @Test
  void labels_that_run_out_leave_it_open() {
    Brief brief = brief(45).build();
    NothingFits answer = nothingFits(brief, Sample.catalog());

    Clash clash =
        Explainer.of(Sample.catalog())
            .whyNothingFits(brief, answer, new Budget(1, Duration.ofMinutes(1)));

    assertThat(clash.complete()).isFalse();
    assertThat(clash.waysOut()).isEmpty();
    assertThat(clash.conflicts()).noneMatch(Clash.Conflict::smallest);
  }

  @Test
  void who_cancels_or_has_no_time_left_is_answered_at_once() {
    Brief brief = brief(45).build();
    NothingFits answer = nothingFits(brief, Sample.catalog());
    Instant[] now = {Instant.EPOCH};
    InstantSource clock = () -> now[0] = now[0].plusMillis(400);

    Clash cancelled =
        Explainer.of(Sample.catalog()).whyNothingFits(brief, answer, Budget.USUAL, () -> true);
    Clash late =
        Explainer.of(Sample.catalog(), clock)
            .whyNothingFits(brief, answer, Budget.of(Duration.ofMillis(300)));

    assertThat(cancelled).isEqualTo(new Clash(List.of(), List.of(), false));
    assertThat(late).isEqualTo(cancelled);
  }

  private static List<String> conflict(Clash clash) {
    assertThat(clash.conflicts()).hasSize(1);
    assertThat(clash.conflicts().get(0).smallest()).isTrue();
    return clash.conflicts().get(0).wishes().stream().map(Clash.Asked::text).toList();
  }

  private static List<String> waysOut(Clash clash) {
    return clash.waysOut().stream()
        .map(way -> String.join(" + ", way.loosenings().stream().map(Loosening::text).toList()))
        .toList();
  }

  private static Clash clash(BriefBuilder builder, Catalog catalog) {
    Brief brief = builder.build();
    return Explainer.of(catalog)
        .whyNothingFits(brief, nothingFits(brief, catalog), Budget.of(Duration.ofMinutes(5)));
  }

  private static NothingFits nothingFits(Brief brief, Catalog catalog) {
    return (NothingFits) Composer.of(catalog).compose(brief, Budget.USUAL);
  }

  private static Set<String> ids(String... ids) {
    return new LinkedHashSet<>(List.of(ids));
  }

  private static Wishes include(String... ids) {
    return new Wishes(ids(ids), Set.of(), List.of(), Set.of());
  }

  private static Wishes pins(Wishes.Pin... pins) {
    return new Wishes(Set.of(), Set.of(), List.of(pins), Set.of());
  }

  private static Wishes.Pin pin(String exercise, int hour, int minute) {
    return new Wishes.Pin(exercise, new Moment.Clock(LocalTime.of(hour, minute)));
  }

  private static OwnItem talk(int length, Optional<String> phase, Optional<Moment> at) {
    return new OwnItem("talk", "A guest speaks", minutes(length), phase, at, 2, Format.PLENARY);
  }
}
