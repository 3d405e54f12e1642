package org.arcwright.live;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.CpSat;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.Limit;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Days on which things slip, at random but from fixed seeds: whatever is advised is checked against
 * {@link RestOfDay}, and where it is advised to give up the goal, a general solver (OR-Tools
 * CP-SAT) must find no way either.
 */
class DayReplayedTest {
  private static final double SECONDS = 20;

  /** What became of the days. */
  private record Tally(int slips, int ways, int parts) {}

  @Test
  void every_way_keeps_what_is_over_and_the_rules_and_no_goal_is_given_up_that_can_be_met() {
    Tally tally = replay(Sample.catalog(exercises(12)), 6, 8);

    assertThat(tally.ways).isGreaterThan(50);
    assertThat(tally.parts).isGreaterThan(2);
  }

  @Test
  @Tag("slow")
  void the_same_for_four_hundred_slips_on_twenty_agendas() {
    Tally tally = replay(Sample.catalog(exercises(30)), 20, 20);

    assertThat(tally.slips).isEqualTo(400);
    assertThat(tally.ways).isGreaterThan(400);
    assertThat(tally.parts).isGreaterThan(20);
  }

  private static Exercise[] exercises(int number) {
    return Crowd.exercises(number).toArray(Exercise[]::new);
  }

  private static Tally replay(Catalog catalog, int agendas, int slips) {
    SoftAssertions softly = new SoftAssertions();
    int done = 0;
    int ways = 0;
    int parts = 0;
    for (int seed = 0; seed < agendas; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief brief = brief(random);
      Agenda agenda =
          ((Composition.Composed) Composer.of(catalog).compose(brief, Budget.USUAL)).agenda();
      Reduction reduction = Reducer.reduce(brief, catalog, () -> false);
      for (int slip = 0; slip < slips; slip++) {
        Stand stand = stand(agenda, random);
        Replan replan = Replanner.of(catalog).replan(brief, agenda, stand, Set.of(), Limit.NONE);
        String which = "agenda " + seed + ", slip " + slip + ": " + stand + "; ";
        RestOfDay rest = new RestOfDay(reduction, agenda, stand);
        for (Way way : replan.ways()) {
          keepsWhatIsOver(softly, which, stand, way);
          keepsTheRules(softly, which, rest, stand, way);
        }
        boolean givenUp = replan.followUp().isPresent();
        softly.assertThat(givenUp || !replan.ways().isEmpty()).describedAs(which).isTrue();
        if (givenUp) {
          for (Instance instance : rest.instances()) {
            softly
                .assertThat(CpSat.solve(instance, SECONDS).status())
                .describedAs(which + "the goal is given up")
                .isEqualTo(CpSolverStatus.INFEASIBLE);
          }
        }
        done++;
        ways += replan.ways().size();
        parts += givenUp ? 1 : 0;
      }
    }
    softly.assertAll();
    return new Tally(done, ways, parts);
  }

  private static Brief brief(SplittableRandom random) {
    int cap = 5 * random.nextInt(20, 49);
    BriefBuilder brief = Sample.brief(cap).bufferPercent(random.nextInt(3) * 10);
    if (cap >= 180) {
      brief.meal(new Meal(Duration.ofMinutes(80), Duration.ofMinutes(110), Duration.ofMinutes(35)));
    }
    if (random.nextInt(3) == 0) {
      brief.wishes(new Wishes(Set.of("dots"), Set.of(), List.of(), Set.of()));
    }
    return brief.build();
  }

  /** Each item took from four fifths to eight fifths of its time, up to some moment of the day. */
  private static Stand stand(Agenda agenda, SplittableRandom random) {
    int reached = random.nextInt(agenda.items().size());
    List<Stand.Past> past = new ArrayList<>();
    long time = random.nextInt(8);
    for (AgendaItem item : agenda.items().subList(0, reached + 1)) {
      long planned = item.length().toMinutes();
      long took = Math.max(2, planned * random.nextInt(16, 33) / 20);
      past.add(
          new Stand.Past(
              Stand.name(item),
              Optional.of(item.length()),
              Duration.ofMinutes(time),
              Optional.of(Duration.ofMinutes(time + took))));
      time += took;
    }
    Stand.Past last = past.get(reached);
    long now = time;
    if (random.nextInt(3) > 0) {
      past.set(
          reached, new Stand.Past(last.item(), last.planned(), last.start(), Optional.empty()));
      now = last.start().toMinutes() + random.nextInt((int) (time - last.start().toMinutes()));
    }
    long cap = agenda.cap().toMinutes();
    long end = random.nextInt(4) == 0 ? cap - random.nextInt(40) : cap;
    return new Stand(Duration.ofMinutes(now), Duration.ofMinutes(Math.max(end, now + 5)), past);
  }

  private static void keepsWhatIsOver(SoftAssertions softly, String which, Stand stand, Way way) {
    List<AgendaItem> items = way.agenda().items();
    for (int i = 0; i < stand.past().size(); i++) {
      Stand.Past past = stand.past().get(i);
      softly.assertThat(Stand.name(items.get(i))).describedAs(which).isEqualTo(past.item());
      Duration end = items.get(i).end();
      softly.assertThat(items.get(i).start()).describedAs(which).isEqualTo(past.start());
      softly.assertThat(past.end().orElse(end)).describedAs(which).isEqualTo(end);
    }
    List<String> ids = way.agenda().activities().stream().map(Activity::exercise).toList();
    softly.assertThat(ids).describedAs(which).doesNotHaveDuplicates();
  }

  private static void keepsTheRules(
      SoftAssertions softly, String which, RestOfDay rest, Stand stand, Way way) {
    String what = which + way.kind();
    softly.assertThat(way.agenda().end()).describedAs(what).isLessThanOrEqualTo(stand.end());
    if (way.kind() == Way.Kind.PART) {
      return;
    }
    boolean nothingLeft =
        way.agenda().items().size() == stand.past().size() && stand.running().isEmpty();
    List<Finding> least = List.of();
    boolean keeps = nothingLeft;
    for (Instance instance : rest.instances()) {
      List<Finding> findings =
          Checker.check(instance, rest.items(way.agenda(), instance)).findings();
      keeps |= findings.isEmpty();
      least = findings;
    }
    softly.assertThat(keeps).describedAs(what + " " + way.agenda().items() + least).isTrue();
  }
}
