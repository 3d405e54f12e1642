package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.WhatIf.Flip;
import org.arcwright.compose.WhatIf.Row;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WhatIfTest {
  private static final Composer COMPOSER =
      Composer.of(
          Sample.only(
              Stream.concat(Sample.exercises().stream(), Crowd.exercises(40).stream()).toList()));
  private static final Brief BRIEF = brief(95).build();

  static List<Sweep> sweeps() {
    return List.of(
        new Sweep(Parameter.CAP, 30, 150, 10),
        new Sweep(Parameter.PEOPLE, 1, 30, 4),
        new Sweep(Parameter.BUFFER, 0, 60, 15),
        new Sweep(Parameter.ENERGY, -20, 20, 10));
  }

  @ParameterizedTest
  @MethodSource("sweeps")
  void each_row_is_what_composing_that_brief_alone_gives(Sweep sweep) {
    WhatIf.Answer answer = ask(BRIEF, sweep);

    assertThat(answer.rows()).extracting(Row::value).isEqualTo(sweep.values());
    for (Row row : answer.rows()) {
      Brief alone = sweep.parameter().set(BRIEF, row.value());
      Composition composition = COMPOSER.compose(alone, Budget.USUAL);
      if (composition instanceof Composed composed) {
        Row.Best best = (Row.Best) row;
        assertThat(best.agenda()).isEqualTo(composed.agenda());
        assertThat(best.proof().best()).isTrue();
        assertThat(best.proof().cost()).isEqualTo(composed.proof().cost());
      } else {
        assertThat(((Row.None) row).reasons())
            .isEqualTo(((NothingFits) composition).reasons())
            .isNotEmpty();
      }
    }
  }

  @Test
  void the_brief_says_what_is_set_and_nothing_else_changes() {
    assertThat(Parameter.CAP.set(BRIEF, 60).cap()).isEqualTo(Duration.ofHours(1));
    assertThat(Parameter.PEOPLE.set(BRIEF, 5).group().count()).isEqualTo(5);
    assertThat(Parameter.BUFFER.set(BRIEF, 33).bufferPercent()).isEqualTo(33);
    assertThat(Parameter.ENERGY.set(BRIEF, 5).curve().at(0, 1))
        .isEqualTo(BRIEF.curve().at(0, 1) + 5);
    for (Parameter parameter : Parameter.values()) {
      assertThat(parameter.set(BRIEF, parameter.of(BRIEF))).isEqualTo(BRIEF);
      assertThat(parameter.set(parameter.set(BRIEF, 20), parameter.of(BRIEF)))
          .isEqualTo(parameter == Parameter.ENERGY ? parameter.set(BRIEF, 20) : BRIEF);
    }
  }

  @Test
  void energy_stays_on_the_scale() {
    EnergyCurve curve = EnergyCurve.Shape.RISING.curve();

    assertThat(curve.livelier(40).points()).allMatch(point -> point.tenths() == 50);
    assertThat(curve.livelier(-40).points()).allMatch(point -> point.tenths() == 10);
    assertThat(curve.livelier(0)).isEqualTo(curve);
  }

  @ParameterizedTest
  @MethodSource("sweeps")
  void it_flips_wherever_the_exercises_are_others_than_before(Sweep sweep) {
    WhatIf.Answer answer = ask(BRIEF, sweep);

    List<Row.Best> best =
        answer.rows().stream()
            .filter(Row.Best.class::isInstance)
            .map(Row.Best.class::cast)
            .toList();
    List<Integer> expected = new ArrayList<>();
    for (int i = 1; i < best.size(); i++) {
      if (!exercises(best.get(i).agenda()).equals(exercises(best.get(i - 1).agenda()))) {
        expected.add(best.get(i).value());
      }
    }
    assertThat(answer.flips()).extracting(flip -> flip.after().value()).isEqualTo(expected);
    for (Flip flip : answer.flips()) {
      Set<String> exercises = new HashSet<>(exercises(flip.before().agenda()));
      flip.goes().forEach(activity -> exercises.remove(activity.exercise()));
      flip.comes().forEach(activity -> exercises.add(activity.exercise()));
      assertThat(exercises).isEqualTo(exercises(flip.after().agenda()));
    }
  }

  @Test
  void a_value_that_no_brief_can_have_is_a_row_with_the_reason() {
    Wishes.Pin pin = new Wishes.Pin("dots", new Moment.After(Duration.ofMinutes(50)));
    Brief pinned = brief(95).wishes(new Wishes(Set.of(), Set.of(), List.of(pin), Set.of())).build();

    List<Row> rows = ask(pinned, new Sweep(Parameter.CAP, 40, 60, 10)).rows();

    assertThat(rows.get(0))
        .isEqualTo(
            new Row.Refused(
                40,
                "wishes.pin[0].at is 50 min after the start: it must start before the workshop"
                    + " ends at 40 min"));
    assertThat(rows.get(2)).isNotInstanceOf(Row.Refused.class);
  }

  @Test
  void a_brief_that_cannot_be_composed_is_refused() {
    Brief wrong =
        Brief.builder("Wrong", "choose-a-venu", BRIEF.mode(), 8, Duration.ofHours(2)).build();

    assertThatThrownBy(() -> ask(wrong, new Sweep(Parameter.CAP, 60, 60, 1)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("perhaps choose-a-venue");
  }

  @Test
  void all_share_one_budget() {
    Sweep sweep = new Sweep(Parameter.CAP, 80, 120, 10);
    Budget budget = new Budget(600, Duration.ofMinutes(1));

    WhatIf.Answer answer = WhatIf.ask(COMPOSER, BRIEF, sweep, budget, Cancel.NEVER, row -> {});

    long labels = 0;
    for (Row row : answer.rows()) {
      labels +=
          row instanceof Row.Best best
              ? best.proof().labels()
              : row instanceof Row.Open open ? open.labels() : 0;
    }
    assertThat(answer.rows()).hasSize(5).anyMatch(Row::unsettled);
    assertThat(labels).isLessThan(1_200);
  }

  @Test
  void what_is_left_over_goes_to_those_that_were_not_settled() {
    Sweep sweep = new Sweep(Parameter.CAP, 30, 95, 65);
    long needed = ((Composed) COMPOSER.compose(BRIEF, Budget.USUAL)).proof().labels();
    List<Row> heard = new ArrayList<>();

    WhatIf.Answer answer =
        WhatIf.ask(
            COMPOSER,
            BRIEF,
            sweep,
            new Budget(3 * needed, Duration.ofMinutes(1)),
            Cancel.NEVER,
            heard::add);

    assertThat(heard).hasSize(2);
    assertThat(answer.rows()).noneMatch(Row::unsettled);
  }

  @Test
  void who_cancels_gets_what_is_there() {
    List<Row> heard = new ArrayList<>();
    Sweep sweep = new Sweep(Parameter.CAP, 80, 120, 10);

    WhatIf.Answer answer =
        WhatIf.ask(COMPOSER, BRIEF, sweep, Budget.USUAL, () -> heard.size() >= 2, heard::add);

    assertThat(answer.rows()).hasSize(5).isEqualTo(heard);
    assertThat(answer.rows().subList(0, 2)).noneMatch(Row::unsettled);
    assertThat(answer.rows().subList(2, 5)).allMatch(Row.Open.class::isInstance);
  }

  @ParameterizedTest
  @CsvSource({
    "CAP, 14, 60, 5",
    "CAP, 60, 2401, 600",
    "CAP, 60, 30, 5",
    "CAP, 30, 60, 0",
    "CAP, 15, 2400, 1",
    "PEOPLE, 0, 5, 1",
    "BUFFER, 0, 101, 50",
    "ENERGY, -41, 0, 5"
  })
  void a_sweep_refuses_what_cannot_be(Parameter parameter, int from, int to, int step) {
    assertThatThrownBy(() -> new Sweep(parameter, from, to, step))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith(parameter.word());
  }

  @Test
  void a_sweep_ends_at_the_last_step_that_is_not_over() {
    assertThat(new Sweep(Parameter.ENERGY, -10, 4, 5).values()).containsExactly(-10, -5, 0);
    assertThat(new Sweep(Parameter.CAP, 15, 114, 1).values()).hasSize(Sweep.MOST);
  }

  private static WhatIf.Answer ask(Brief brief, Sweep sweep) {
    return WhatIf.ask(COMPOSER, brief, sweep, Budget.USUAL, Cancel.NEVER, row -> {});
  }

  private static Set<String> exercises(Agenda agenda) {
    return agenda.activities().stream().map(Activity::exercise).collect(Collectors.toSet());
  }
}
