package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.catalog;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;

class ComposerTest {
  private final Composer composer = Composer.of(catalog());
  private final Brief brief = brief(90).build();

  @Test
  void the_best_agenda_comes_with_its_proof() {
    Composition answer = composer.compose(brief, Budget.USUAL);

    assertThat(answer)
        .asInstanceOf(type(Composed.class))
        .satisfies(
            composed -> {
              assertThat(composed.proof().best()).isTrue();
              assertThat(composed.proof().cost())
                  .isEqualTo(composed.proof().bound())
                  .isEqualTo(composed.agenda().figures().cost().total());
              assertThat(composer.check(composed.agenda(), brief).fits()).isTrue();
            });
  }

  @Test
  void the_agenda_opens_with_an_icebreaker_and_closes_with_reflection() {
    // Common practice, no source: a workshop opens with an icebreaker and closes with reflection.
    Agenda agenda = ((Composed) composer.compose(brief, Budget.USUAL)).agenda();

    assertThat(agenda.activities().get(0).kind()).hasToString("Optional[ICEBREAKER]");
    assertThat(agenda.activities().get(agenda.activities().size() - 1).kind())
        .hasToString("Optional[REFLECTION]");
  }

  @Test
  void exercises_left_out_are_told_with_the_reason() {
    Brief without =
        brief(90).wishes(new Wishes(Set.of(), Set.of("race"), List.of(), Set.of())).build();

    assertThat(composer.compose(without, Budget.USUAL).leftOut())
        .containsExactly(
            new LeftOut("race", Optional.of("wishes.leave-out"), "left out by the brief"));
  }

  @Test
  void threads_share_a_composer_and_get_the_same_answer() {
    Composed alone = (Composed) composer.compose(brief, Budget.USUAL);

    List<Agenda> together =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> ((Composed) composer.compose(brief, Budget.USUAL)).agenda())
            .toList();

    assertThat(together).allMatch(alone.agenda()::equals);
  }

  @Test
  void the_time_spent_is_read_from_the_clock() {
    Composition answer = Composer.of(catalog(), tick(1)).compose(brief, Budget.USUAL);

    assertThat(answer)
        .asInstanceOf(type(Composed.class))
        .satisfies(composed -> assertThat(composed.proof().time()).isPositive());
  }

  @Test
  void time_that_runs_out_before_the_reduction_ends_stops_it() {
    Composition answer =
        Composer.of(catalog(), tick(1_000)).compose(brief, Budget.of(Duration.ofMillis(500)));

    assertThat(answer)
        .asInstanceOf(type(Stopped.class))
        .satisfies(
            stopped -> {
              assertThat(stopped.labels()).isZero();
              assertThat(stopped.bound()).isEmpty();
              assertThat(stopped.instance().candidates()).isEmpty();
            });
  }

  @Test
  void time_that_runs_out_in_the_search_stops_it() {
    Composition answer =
        Composer.of(catalog(), tick(400)).compose(brief, Budget.of(Duration.ofMillis(1_100)));

    assertThat(answer)
        .asInstanceOf(type(Stopped.class))
        .satisfies(stopped -> assertThat(stopped.instance().candidates()).isNotEmpty());
  }

  @Test
  void labels_that_run_out_stop_it() {
    assertThat(composer.compose(brief, new Budget(1, Duration.ofMinutes(1))))
        .isInstanceOf(Stopped.class);
  }

  @Test
  void who_cancels_gets_what_is_there() {
    assertThat(composer.compose(brief, Budget.USUAL, () -> true)).isInstanceOf(Stopped.class);
  }

  @Test
  void a_thread_that_is_interrupted_gets_what_is_there_and_stays_interrupted() {
    Thread.currentThread().interrupt();
    Composition answer = composer.compose(brief, Budget.USUAL);

    assertThat(Thread.interrupted()).isTrue();
    assertThat(answer).isInstanceOf(Stopped.class);
  }

  @Test
  void who_cancels_on_the_first_agenda_gets_that_one_with_a_bound() {
    Composer large = Composer.of(Sample.only(Crowd.exercises(300)));
    AtomicReference<Agenda> first = new AtomicReference<>();
    Listener listener =
        new Listener() {
          @Override
          public void incumbent(Agenda agenda, long cost) {
            first.compareAndSet(null, agenda);
          }
        };

    Composition answer = large.compose(brief, Budget.USUAL, () -> first.get() != null, listener);

    Composed composed = (Composed) answer;
    assertThat(composed.agenda()).isEqualTo(first.get());
    assertThat(composed.proof().best()).isFalse();
    assertThat(composed.proof().bound()).isPositive().isLessThanOrEqualTo(composed.proof().cost());
  }

  @Test
  void a_listener_hears_of_better_agendas_and_higher_bounds_until_they_meet() {
    List<Agenda> agendas = new ArrayList<>();
    List<Long> costs = new ArrayList<>();
    List<Long> bounds = new ArrayList<>();
    Listener listener =
        new Listener() {
          @Override
          public void incumbent(Agenda agenda, long cost) {
            agendas.add(agenda);
            costs.add(cost);
          }

          @Override
          public void bound(long cost) {
            bounds.add(cost);
          }
        };

    Composed composed = (Composed) composer.compose(brief, Budget.USUAL, Cancel.NEVER, listener);

    assertThat(agendas).last().isEqualTo(composed.agenda());
    assertThat(agendas).allMatch(agenda -> composer.check(agenda, brief).fits());
    assertThat(costs).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(bounds).isSorted();
    assertThat(costs).last().isEqualTo(bounds.get(bounds.size() - 1));
  }

  @Test
  void nothing_fits_is_an_answer() {
    assertThat(composer.compose(brief(25).build(), Budget.USUAL))
        .asInstanceOf(type(NothingFits.class))
        .satisfies(answer -> assertThat(answer.reasons()).isNotEmpty());
  }

  /** A clock that goes on by so many milliseconds whenever somebody looks at it. */
  private static InstantSource tick(long millis) {
    return new InstantSource() {
      private Instant now = Instant.EPOCH;

      @Override
      public Instant instant() {
        now = now.plusMillis(millis);
        return now;
      }
    };
  }
}
