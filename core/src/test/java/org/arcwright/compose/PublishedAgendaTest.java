package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.junit.jupiter.api.Test;

/**
 * A published agenda, checked. Source: The Carpentries, instructor training, day 1 (CC BY 4.0):
 * nine sessions, two breaks of 15 minutes and a lunch of 60 make 470 minutes, in runs of 90, 110,
 * 100 and 80 minutes between breaks. A break about every 90 minutes is the rule in person (KACEE,
 * "Building your agenda"), which two of the runs break.
 */
class PublishedAgendaTest {
  private static final List<Integer> SESSIONS = List.of(30, 60, 45, 45, 20, 60, 40, 60, 20);
  private static final Map<Integer, Integer> BREAK_AFTER = Map.of(1, 15, 4, 60, 6, 15);

  private final BriefBuilder brief =
      Brief.builder("Day 1", "train", Mode.IN_PERSON, 16, minutes(470))
          .bufferPercent(0)
          .meal(new Meal(minutes(200), minutes(240), minutes(60)));
  private final List<AgendaItem> items = new ArrayList<>();

  PublishedAgendaTest() {
    Duration next = Duration.ZERO;
    for (int i = 0; i < SESSIONS.size(); i++) {
      Duration length = minutes(SESSIONS.get(i));
      String id = "session-" + i;
      items.add(
          new AgendaItem.Activity(
              id, id, Optional.empty(), "train", next, length, Format.PLENARY, 30));
      brief.ownItem(
          new OwnItem(id, id, length, Optional.of("train"), Optional.empty(), 3, Format.PLENARY));
      next = next.plus(length);
      if (BREAK_AFTER.containsKey(i)) {
        Duration pause = minutes(BREAK_AFTER.get(i));
        items.add(new AgendaItem.Pause(next, pause, pause.equals(minutes(60))));
        next = next.plus(pause);
      }
    }
    assertThat(next).isEqualTo(minutes(470));
  }

  @Test
  void two_of_its_runs_are_over_ninety_minutes_and_its_longest_lasts_110() {
    Review review = Composer.of(catalog()).check(agenda(), brief.build());

    assertThat(review.figures().longestStretch()).isEqualTo(minutes(110));
    assertThat(review.remarks())
        .filteredOn(remark -> remark.rule() == 5)
        .extracting(Review.Remark::text)
        .containsExactly(
            "From minute 105 on people work 110 minutes without a break; at most 90 are right. Put a"
                + " break in between.",
            "From minute 275 on people work 100 minutes without a break; at most 90 are right. Put a"
                + " break in between.");
  }

  /** What else there is to say: the arc wants an exercise of its own beside the own items. */
  @Test
  void its_times_add_up() {
    Review review = Composer.of(catalog()).check(agenda(), brief.build());

    assertThat(review.remarks()).extracting(Review.Remark::rule).containsOnly(3, 5);
  }

  private Agenda agenda() {
    Figures none =
        new Figures(Map.of(), 0, Duration.ZERO, new Figures.Cost(0, 0, 0, 0, 0, 0, 0, 0));
    return new Agenda(
        "Day 1",
        "train",
        Mode.IN_PERSON,
        16,
        minutes(470),
        Optional.empty(),
        List.of(),
        items,
        Duration.ZERO,
        List.of(),
        none);
  }

  private static Catalog catalog() {
    Phase.Share all = new Phase.Share(0, 100, 100);
    Phase phase = new Phase("train", "Train", Set.of(Kind.DIVERGENT), 1, 30, all, Set.of());
    Goal train = new Goal("train", "Train", "To train.", Set.of(), Set.of(), List.of(phase));
    return Catalog.of(List.of(), List.of(), List.of(), List.of(train));
  }
}
