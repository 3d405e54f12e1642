package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;
import org.arcwright.compose.explain.Feasibility.Status;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether any agenda keeps to a brief, and how little it takes to know. */
class FeasibilityTest {
  private static final Catalog CATALOG = Sample.catalog();

  private final Effort effort =
      Effort.of(new Budget(1_000_000, Duration.ofMinutes(5)), Cancel.NEVER, InstantSource.system());
  private final Feasibility feasibility = new Feasibility(CATALOG, effort);

  /** The shortest take 40 minutes, and 15 % of them are kept free: 50 on the grid. */
  @ParameterizedTest
  @ValueSource(ints = {15, 45, 50, 90, 240})
  void it_is_as_the_composer_says(int cap) {
    Case asked = of(brief(cap));

    assertThat(feasibility.of(asked).status()).isEqualTo(cap < 50 ? Status.FITS_NOT : Status.FITS);
    assertThat(feasibility.agenda(asked).isPresent()).isEqualTo(cap >= 50);
    feasibility
        .agenda(asked)
        .ifPresent(
            agenda ->
                assertThat(Composer.of(CATALOG).check(agenda, asked.brief()).remarks()).isEmpty());
  }

  @Test
  void asked_again_it_remembers() {
    assertThat(workFor(of(brief(90)))).isPositive();
    assertThat(workFor(of(brief(90)))).isZero();
    assertThat(workFor(of(brief(45)))).isNotNegative();
    assertThat(workFor(of(brief(45)))).isZero();
  }

  @Test
  void an_agenda_that_was_found_answers_for_every_brief_that_it_keeps_to() {
    Agenda agenda = feasibility.agenda(of(brief(90))).orElseThrow();
    String first = agenda.activities().get(0).exercise();
    String other = first.equals("names") ? "race" : "names";

    assertThat(workFor(of(brief(90).openness(3)))).isZero();
    assertThat(workFor(of(brief(90).wishes(wishes(Set.of(first), Set.of()))))).isZero();
    assertThat(workFor(of(brief(90).wishes(wishes(Set.of(), Set.of(other)))))).isZero();
    assertThat(workFor(of(brief(90).wishes(wishes(Set.of(other), Set.of()))))).isPositive();
    assertThat(workFor(of(brief(90).wishes(wishes(Set.of(), Set.of(first)))))).isPositive();
  }

  @Test
  void a_rule_counts_unless_it_is_set_aside() {
    Catalog ours =
        CATALOG.withRules(
            Rule.neverInARow(
                "never two silent exercises in a row",
                (exercise, people) -> exercise.format(people) == Format.SOLO));
    Feasibility feasibility = new Feasibility(ours, effort);
    Brief unbroken =
        brief(70)
            .rhythm(new Rhythm(minutes(20), minutes(60), minutes(0)))
            .wishes(wishes(Set.of("silent-list", "dots"), Set.of()))
            .build();

    assertThat(feasibility.of(new Case(unbroken, Set.of())).status()).isEqualTo(Status.FITS_NOT);
    assertThat(feasibility.of(new Case(unbroken, ours.rules().keySet())).status())
        .isEqualTo(Status.FITS);
  }

  /** The opening's share of four hours ends long before; its minutes alone would do. */
  @Test
  void without_shares_a_phase_may_be_as_short_and_as_long_as_it_takes() {
    Wishes late =
        new Wishes(
            Set.of(),
            Set.of(),
            List.of(new Wishes.Pin("one-word", new Moment.After(minutes(35)))),
            Set.of());
    Case asked = of(brief(240).wishes(late));

    assertThat(feasibility.of(asked).status()).isEqualTo(Status.FITS_NOT);
    assertThat(feasibility.withoutShares(asked)).isEqualTo(Status.FITS);
    assertThat(feasibility.withoutShares(of(brief(45)))).isEqualTo(Status.FITS_NOT);
  }

  @Test
  void who_has_nothing_left_does_not_know() {
    effort.add(1_000_000);

    assertThat(feasibility.of(of(brief(90))).status()).isEqualTo(Status.UNKNOWN);
    assertThat(feasibility.agenda(of(brief(90)))).isEmpty();
  }

  /** By the minute a plan ends at 511 minutes, so this question cannot be put. */
  @Test
  void what_is_too_large_to_be_planned_is_not_known() {
    Wishes odd =
        new Wishes(
            Set.of(),
            Set.of(),
            List.of(new Wishes.Pin("dots", new Moment.After(minutes(67)))),
            Set.of());

    assertThat(feasibility.of(of(brief(600).wishes(odd))).status()).isEqualTo(Status.UNKNOWN);
  }

  /** Labels that a question takes. */
  private long workFor(Case asked) {
    long before = effort.part(1).labels();
    feasibility.of(asked);
    return before - effort.part(1).labels();
  }

  private static Case of(BriefBuilder brief) {
    return new Case(brief.build(), Set.of());
  }

  private static Wishes wishes(Set<String> in, Set<String> out) {
    return new Wishes(in, out, List.of(), Set.of());
  }
}
