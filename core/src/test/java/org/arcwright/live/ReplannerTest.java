package org.arcwright.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.Limit;
import org.arcwright.format.ReplanFormat;
import org.junit.jupiter.api.Test;

/** A day of three hours; each test says what goes wrong with it. */
class ReplannerTest {
  private static final Catalog CATALOG = Sample.catalog();

  private final BriefBuilder brief = Sample.brief(180);

  private Agenda agenda() {
    return ((Composed) Composer.of(CATALOG).compose(brief.build(), Budget.USUAL)).agenda();
  }

  private Replan replan(Stand stand, String... movable) {
    return Replanner.of(CATALOG)
        .replan(brief.build(), agenda(), stand, Set.of(movable), Limit.NONE);
  }

  /** The exercise of that number runs, and should have been over so many minutes ago. */
  private Stand late(int number, int minutes) {
    Agenda agenda = agenda();
    Activity runs = agenda.activities().get(number - 1);
    Duration now = runs.end().plusMinutes(minutes);
    return Stand.at(agenda, runs.exercise(), Optional.empty(), now, agenda.cap());
  }

  @Test
  void a_day_that_keeps_to_its_plan_goes_on() {
    Agenda agenda = agenda();

    Replan replan = replan(Stand.asPlanned(agenda, minutes(50), agenda.cap()));

    assertThat(replan.behind()).isZero();
    assertThat(replan.ways()).extracting(Way::kind).containsExactly(Way.Kind.CARRY_ON);
    assertThat(replan.ways().get(0).changes()).isEmpty();
    assertThat(replan.ways().get(0).agenda().items()).isEqualTo(agenda.items());
  }

  @Test
  void twenty_minutes_late_there_are_ways_of_different_kinds_that_lose_nothing() {
    Replan replan = replan(late(3, 20));

    assertThat(replan.behind()).isBetween(minutes(20), minutes(25));
    assertThat(replan.ways()).isNotEmpty().extracting(Way::kind).doesNotHaveDuplicates();
    assertThat(replan.ways())
        .allSatisfy(
            way -> {
              assertThat(way.agenda().end()).isLessThanOrEqualTo(replan.end());
              assertThat(way.best()).isTrue();
            });
    assertThat(replan.followUp()).isEmpty();
  }

  @Test
  void the_way_to_take_first_is_sure_enough_if_any_is() {
    Replan replan = replan(late(3, 20));

    double surest = replan.ways().stream().mapToDouble(Way::onTime).max().orElseThrow();
    assertThat(replan.ways().get(0).onTime()).isGreaterThanOrEqualTo(Math.min(0.8, surest));
  }

  /** Who would rather stop in good order than hope is shown how. */
  @Test
  void where_no_way_is_more_likely_in_time_than_not_what_can_be_done_well_stands_beside() {
    int beside = 0;
    for (int number = 1; number <= agenda().activities().size(); number++) {
      for (int minutes = 10; minutes <= 120; minutes += 10) {
        if (agenda()
                .activities()
                .get(number - 1)
                .end()
                .plusMinutes(minutes)
                .compareTo(agenda().cap())
            >= 0) {
          continue;
        }
        List<Way> ways = replan(late(number, minutes)).ways();
        if (ways.size() > 1 && ways.get(ways.size() - 1).kind() == Way.Kind.PART) {
          List<Way> others = ways.subList(0, ways.size() - 1);
          assertThat(others).allMatch(way -> way.onTime() < 0.5);
          assertThat(ways.get(ways.size() - 1).onTime()).isGreaterThanOrEqualTo(0.5);
          beside++;
        }
      }
    }
    assertThat(beside).isPositive();
  }

  @Test
  void after_an_hour_at_a_stretch_a_break_comes_next() {
    Agenda agenda = agenda();
    Activity first = agenda.activities().get(0);
    Stand stand =
        Stand.at(agenda, first.exercise(), Optional.of(minutes(0)), minutes(58), agenda.cap());

    for (Way way : replan(stand).ways()) {
      assertThat(way.agenda().items().get(1)).isInstanceOf(AgendaItem.Pause.class);
    }
  }

  /** However late, whichever runs: where moving breaks is enough, that is a way of its own. */
  @Test
  void where_only_a_break_has_to_move_everything_stays() {
    int found = 0;
    for (int cap = 120; cap <= 240; cap += 15) {
      Brief day = Sample.brief(cap).build();
      Agenda agenda = ((Composed) Composer.of(CATALOG).compose(day, Budget.USUAL)).agenda();
      for (Activity runs : agenda.activities()) {
        for (int late = 5; late <= 20; late += 5) {
          Duration now = runs.end().plusMinutes(late);
          if (now.compareTo(agenda.cap()) < 0) {
            Stand stand = Stand.at(agenda, runs.exercise(), Optional.empty(), now, agenda.cap());
            Replan replan = Replanner.of(CATALOG).replan(day, agenda, stand, Set.of(), Limit.NONE);
            found +=
                (int) replan.ways().stream().filter(way -> onlyBreaksMove(way, replan)).count();
          }
        }
      }
    }
    assertThat(found).isPositive();
  }

  private static boolean onlyBreaksMove(Way way, Replan replan) {
    if (way.kind() != Way.Kind.SHORTEN || !way.changes().isEmpty()) {
      return false;
    }
    assertThat(way.agenda().items()).isNotEqualTo(replan.unchanged().agenda().items());
    assertThat(way.agenda().activities())
        .extracting(Activity::exercise, Activity::length)
        .containsExactlyElementsOf(
            replan.unchanged().agenda().activities().stream()
                .map(activity -> tuple(activity.exercise(), activity.length()))
                .toList());
    return true;
  }

  @Test
  void a_meal_held_after_its_hour_is_not_held_again() {
    brief.meal(new Meal(minutes(60), minutes(75), minutes(30)));
    Agenda agenda = agenda();
    int meal = place(agenda, item -> item instanceof AgendaItem.Pause pause && pause.meal());
    Activity next = (Activity) agenda.items().get(meal + 1);
    List<Stand.Past> past = new ArrayList<>();
    for (AgendaItem item : agenda.items().subList(0, meal)) {
      past.add(over(item, item.start(), item.end()));
    }
    past.add(over(agenda.items().get(meal), minutes(110), minutes(140)));
    past.add(
        new Stand.Past(
            next.exercise(), Optional.of(next.length()), minutes(140), Optional.empty()));

    Replan replan = replan(new Stand(minutes(141), minutes(240), past));

    assertThat(replan.unchanged().agenda().items())
        .filteredOn(item -> item instanceof AgendaItem.Pause pause && pause.meal())
        .extracting(AgendaItem::start)
        .containsExactly(minutes(110));
    assertThat(replan.ways()).isNotEmpty();
    assertThat(replan.ways().get(0).agenda().items())
        .filteredOn(item -> item instanceof AgendaItem.Pause pause && pause.meal())
        .hasSize(1);
  }

  @Test
  void ahead_of_the_plan_the_minutes_go_where_they_serve_and_the_day_ends_no_later() {
    Agenda agenda = agenda();
    Activity third = agenda.activities().get(2);
    Stand stand =
        Stand.at(
            agenda,
            third.exercise(),
            Optional.of(third.start().minusMinutes(20)),
            third.start().minusMinutes(20),
            agenda.cap());

    Replan replan = replan(stand);

    assertThat(replan.behind()).isEqualTo(minutes(-20));
    assertThat(replan.ways()).extracting(Way::kind).contains(Way.Kind.CARRY_ON, Way.Kind.LINGER);
    assertThat(replan.ways())
        .allSatisfy(way -> assertThat(way.agenda().end()).isLessThanOrEqualTo(agenda.end()));
  }

  @Test
  void when_the_goal_is_out_of_reach_the_best_part_is_done_and_the_rest_handed_over() {
    Agenda agenda = agenda();
    Activity second = agenda.activities().get(1);
    Stand stand =
        Stand.at(
            agenda,
            second.exercise(),
            Optional.empty(),
            second.end(),
            second.end().plusMinutes(20));

    Replan replan = replan(stand);

    assertThat(replan.ways()).extracting(Way::kind).containsExactly(Way.Kind.PART);
    Replan.FollowUp followUp = replan.followUp().orElseThrow();
    assertThat(followUp.products()).contains("decision");
    assertThat(followUp.exercises()).isNotEmpty();
    List<Activity> done = replan.ways().get(0).agenda().activities();
    assertThat(done.get(done.size() - 1).phase()).isEqualTo("close");
  }

  @Test
  void a_guest_keeps_the_hour_unless_told_that_it_may_move() {
    brief.ownItem(
        new OwnItem(
            "guest",
            "A guest",
            minutes(20),
            Optional.empty(),
            Optional.of(new Moment.After(minutes(120))),
            2,
            Format.PLENARY));

    assertThat(replan(late(2, 15)).ways())
        .isNotEmpty()
        .allSatisfy(way -> assertThat(start(way, "guest")).isEqualTo(minutes(120)));
    assertThat(replan(late(2, 15), "guest").ways()).isNotEmpty();
    assertThatThrownBy(() -> replan(late(2, 15), "nobody"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("nothing of that id is tied to a time");
  }

  @Test
  void an_agreed_way_is_a_plan_like_any_other() {
    Stand stand = late(3, 20);
    Way agreed = replan(stand).ways().get(0);

    Replan again =
        Replanner.of(CATALOG).replan(brief.build(), agreed.agenda(), stand, Set.of(), Limit.NONE);

    assertThat(again.behind()).isZero();
    assertThat(again.unchanged().keeps()).isTrue();
    assertThat(again.ways().get(0).agenda().items()).isEqualTo(agreed.agenda().items());
  }

  @Test
  void what_is_written_is_read_as_an_equal_answer() {
    for (Stand stand : List.of(late(3, 20), late(4, 60))) {
      Replan replan = replan(stand);
      String text = ReplanFormat.write(replan, brief.build());

      assertThat(ReplanFormat.read("replan.json", text)).isEqualTo(replan);
    }
  }

  @Test
  void who_is_told_only_what_runs_takes_all_before_it_as_over() {
    Agenda agenda = agenda();
    String third = agenda.activities().get(2).exercise();

    Stand stand = Stand.at(agenda, "3", Optional.empty(), minutes(100), agenda.cap());

    assertThat(stand)
        .isEqualTo(Stand.at(agenda, third, Optional.empty(), minutes(100), agenda.cap()));
    assertThat(stand.running().map(Stand.Past::item)).contains(third);
    assertThat(stand.past())
        .allSatisfy(past -> assertThat(past.end().isEmpty()).isEqualTo(past.item().equals(third)));
    assertThatThrownBy(
            () -> Stand.at(agenda, third + "s", Optional.empty(), minutes(9), agenda.cap()))
        .hasMessageContaining("perhaps " + third);
  }

  @Test
  void a_stand_is_refused_that_cannot_be() {
    assertThat(
            List.of(
                tuple(-1, 180, "a time after the start"), tuple(180, 180, "before the end at 180")))
        .allSatisfy(
            wrong -> {
              Object[] values = wrong.toArray();
              assertThatThrownBy(
                      () ->
                          new Stand(minutes((int) values[0]), minutes((int) values[1]), List.of()))
                  .hasMessageContaining((String) values[2]);
            });
  }

  private static int place(Agenda agenda, Predicate<AgendaItem> what) {
    return agenda.items().indexOf(agenda.items().stream().filter(what).findFirst().orElseThrow());
  }

  private static Stand.Past over(AgendaItem item, Duration start, Duration end) {
    return new Stand.Past(Stand.name(item), Optional.of(item.length()), start, Optional.of(end));
  }

  private static Duration start(Way way, String id) {
    return way.agenda().activities().stream()
        .filter(activity -> activity.exercise().equals(id))
        .findFirst()
        .orElseThrow()
        .start();
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
