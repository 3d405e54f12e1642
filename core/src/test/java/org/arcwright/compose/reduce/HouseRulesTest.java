package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiPredicate;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HouseRulesTest {
  private static final Rule.Such ALONE =
      (exercise, people) -> exercise.format(people) == Format.SOLO;
  private static final List<Allowed> ALLOWED =
      Sample.exercises().stream().map(Sample::allowed).toList();
  private static final Set<String> SILENT = Set.of("silent-list", "dots", "ballot");

  @Test
  void never_two_such_in_a_row_is_one_pair_of_sets() {
    Rule.Apart<Boolean> rule = Rule.neverInARow("silence", ALONE);

    assertThat(of(rule)).isEqualTo(apart(new Apart("silence", SILENT, SILENT, false)));
    assertThat(of(rule.evenAcrossBreaks()))
        .isEqualTo(apart(new Apart("silence", SILENT, SILENT, true)));
  }

  @Test
  void exercises_that_bar_the_same_followers_share_a_pair_of_sets() {
    Rule rule =
        Rule.neverNext("calm", (exercise, people) -> exercise.energy(), (x, y) -> x < 3 && y < 3);

    assertThat(of(rule))
        .isEqualTo(
            apart(
                new Apart(
                    "calm",
                    Set.of("names", "silent-list", "one-word", "ballot"),
                    Set.of("names", "silent-list", "one-word", "ballot"),
                    false)));
  }

  /** Oracle: every pair of exercises, asked one by one. */
  @ParameterizedTest
  @ValueSource(ints = {-3, -2, -1, 0, 1, 2, 3})
  void the_sets_bar_the_pairs_that_the_rule_bars_and_no_others(int leap) {
    BiPredicate<Integer, Integer> never = (before, after) -> after - before == leap;
    Instance.Rules rules =
        of(Rule.neverNext("leaps", (exercise, people) -> exercise.energy(), never));

    Set<String> said = new HashSet<>();
    for (Apart pair : rules.apart()) {
      pair.first().forEach(one -> pair.then().forEach(other -> said.add(one + " " + other)));
    }
    Set<String> barred = new HashSet<>();
    for (Exercise one : Sample.exercises()) {
      for (Exercise other : Sample.exercises()) {
        if (never.test(one.energy(), other.energy())) {
          barred.add(one.id() + " " + other.id());
        }
      }
    }
    assertThat(said).isEqualTo(barred);
  }

  @Test
  void a_number_is_a_rule_only_if_there_are_more_to_be_had() {
    assertThat(of(Rule.atMost("silence", 2, ALONE)).atMost())
        .containsExactly(new AtMost("silence", SILENT, 2));
    assertThat(of(Rule.atMost("silence", 3, ALONE)).atMost()).isEmpty();
  }

  @Test
  void rules_see_how_many_do_an_exercise() {
    Rule.Such eights = (exercise, people) -> people == 8;

    assertThat(of(Rule.atMost("eights", 0, eights)).atMost())
        .singleElement()
        .satisfies(rule -> assertThat(rule.of()).hasSize(Sample.exercises().size()));
    assertThat(of(Rule.neverInARow("eights", eights)).apart())
        .singleElement()
        .satisfies(rule -> assertThat(rule.first()).hasSize(Sample.exercises().size()));
  }

  /** A rule on traits with many values can take long, so it asks between them whether to stop. */
  @Test
  void work_stops_between_two_values_and_says_that_a_rule_was_passed_over() {
    AtomicInteger asked = new AtomicInteger();
    Rule each = Rule.neverNext("twice", (exercise, people) -> exercise.id(), String::equals);
    HouseRules stopped = new HouseRules(ALLOWED, 8, () -> asked.incrementAndGet() == 3);
    HouseRules finished = new HouseRules(ALLOWED, 8, () -> false);

    assertThat(stopped.of(List.of(each)).apart()).isEmpty();
    assertThat(asked).hasValue(3);
    assertThat(stopped.complete()).isFalse();
    assertThat(finished.of(List.of(each)).apart()).hasSize(Sample.exercises().size());
    assertThat(finished.complete()).isTrue();
  }

  private static Instance.Rules of(Rule... rules) {
    return new HouseRules(ALLOWED, 8, () -> false).of(List.of(rules));
  }

  private static Instance.Rules apart(Apart... pairs) {
    return new Instance.Rules(List.of(pairs), List.of());
  }
}
