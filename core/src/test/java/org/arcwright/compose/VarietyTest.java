package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VarietyTest {
  private final Composer composer = Composer.of(Sample.catalog());

  @ParameterizedTest
  @ValueSource(ints = {60, 90, 120, 180})
  void the_first_agenda_is_the_best(int minutes) {
    Brief brief = Sample.brief(minutes).build();
    Composed best = (Composed) composer.compose(brief, Budget.USUAL);

    assertThat(variety(brief, 1).agendas())
        .containsExactly(best.agenda().activities().stream().map(Activity::exercise).toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 90, 120, 180})
  void no_two_share_more_than_half_of_their_exercises(int minutes) {
    List<List<String>> agendas = variety(Sample.brief(minutes).build(), 5).agendas();

    assertThat(agendas).hasSizeGreaterThan(1);
    for (List<String> one : agendas) {
      for (List<String> other : agendas) {
        if (one != other) {
          Set<String> shared = new HashSet<>(one);
          shared.retainAll(other);
          assertThat(2 * shared.size()).isLessThanOrEqualTo(Math.min(one.size(), other.size()));
        }
      }
    }
  }

  /** A brief that wishes for the exercises of an agenda and for no other must have it. */
  @ParameterizedTest
  @ValueSource(ints = {60, 90, 120, 180})
  void each_agenda_keeps_to_the_brief(int minutes) {
    BriefBuilder brief = Sample.brief(minutes);

    assertThat(variety(brief.build(), 5).agendas())
        .isNotEmpty()
        .allSatisfy(
            agenda -> {
              Set<String> others = new TreeSet<>(Sample.catalog().exercises().keySet());
              agenda.forEach(others::remove);
              Wishes only = new Wishes(new HashSet<>(agenda), others, List.of(), Set.of());
              assertThat(composer.compose(brief.wishes(only).build(), Budget.USUAL))
                  .isInstanceOf(Composed.class);
            });
  }

  @Test
  void there_are_no_more_than_were_asked_for() {
    assertThat(variety(Sample.brief(120).build(), 2).agendas()).hasSize(2);
  }

  @Test
  void where_nothing_fits_there_is_none_and_that_is_certain() {
    Brief brief = Sample.brief(15).build();

    assertThat(variety(brief, 3)).isEqualTo(new Variety(List.of(), true));
  }

  @Test
  void where_there_is_one_way_only_there_is_one_agenda() {
    Brief brief = Sample.brief(90).build();
    Composed best = (Composed) composer.compose(brief, Budget.USUAL);
    Set<String> used = new HashSet<>();
    best.agenda().activities().forEach(activity -> used.add(activity.exercise()));
    Catalog all = Sample.catalog();
    Catalog narrow =
        Catalog.of(
            all.products().values(),
            all.tools().values(),
            new ArrayList<>(used).stream().map(id -> all.exercise(id).orElseThrow()).toList(),
            all.goals().values());

    assertThat(Composer.of(narrow).variety(brief, 3, Budget.USUAL, Cancel.NEVER).agendas())
        .hasSize(1);
  }

  @Test
  void who_cancels_is_not_told_that_nothing_fits() {
    Brief brief = Sample.brief(90).build();

    assertThat(composer.variety(brief, 3, Budget.USUAL, () -> true).counted()).isFalse();
    assertThat(
            composer
                .variety(brief, 3, new Budget(1, Duration.ofSeconds(9)), Cancel.NEVER)
                .counted())
        .isFalse();
  }

  @Test
  void none_is_no_number_to_look_for() {
    assertThatThrownBy(() -> variety(Sample.brief(90).build(), 0))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("most");
  }

  private Variety variety(Brief brief, int most) {
    return composer.variety(brief, most, Budget.USUAL, Cancel.NEVER);
  }
}
