package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.testkit.ComposedAgenda;
import org.arcwright.testkit.TestKit;
import org.junit.jupiter.api.Test;

/** What a firm's own rules do to agendas. */
class RulesTest {
  private static final Rule.Such ALONE =
      (exercise, people) -> exercise.format(people) == Format.SOLO;
  private static final Rule.Apart<Boolean> NEVER_TWO =
      Rule.neverInARow("never two silent exercises in a row", ALONE);
  private static final Rule AT_MOST_ONE = Rule.atMost("at most one silent exercise", 1, ALONE);

  private static final Catalog PLAIN = Sample.catalog();
  private static final Brief BRIEF =
      Sample.brief(90)
          .rhythm(new Rhythm(Sample.minutes(20), Sample.minutes(90), Sample.minutes(0)))
          .wishes(new Wishes(Set.of("silent-list", "dots"), Set.of(), List.of(), Set.of()))
          .build();

  @Test
  void the_plain_catalog_would_break_them() {
    assertThat(formats(best(PLAIN))).containsSequence(Format.SOLO, Format.SOLO);
  }

  @Test
  void neighbours_are_kept_apart() {
    composed(PLAIN.withRules(NEVER_TWO))
        .neverInARow("silent exercises", activity -> activity.format() == Format.SOLO);
  }

  @Test
  void a_break_between_parts_them_unless_the_rule_holds_across_it() {
    composed(PLAIN.withRules(NEVER_TWO.evenAcrossBreaks()))
        .neverInARowEvenAcrossBreaks(
            "silent exercises", activity -> activity.format() == Format.SOLO);
  }

  @Test
  void there_are_only_so_many() {
    Brief brief = Sample.brief(70).build();

    assertThat(formats(TestKit.of(PLAIN).brief(brief).composes().agenda()))
        .filteredOn(Format.SOLO::equals)
        .hasSize(2);
    assertThat(formats(TestKit.of(PLAIN.withRules(AT_MOST_ONE)).brief(brief).composes().agenda()))
        .containsOnlyOnce(Format.SOLO);
  }

  @Test
  void a_rule_on_traits_looks_at_both() {
    Rule steady =
        Rule.neverNext(
            "never a leap in energy",
            (exercise, people) -> exercise.energy(),
            (before, after) -> Math.abs(before - after) > 1);

    List<Activity> activities = composed(PLAIN.withRules(steady)).agenda().activities();

    for (int i = 1; i < activities.size(); i++) {
      if (activities.get(i - 1).end().equals(activities.get(i).start())) {
        assertThat(Math.abs(activities.get(i).energy() - activities.get(i - 1).energy()))
            .isLessThanOrEqualTo(10);
      }
    }
  }

  @Test
  void a_rule_costs_no_less_than_none() {
    assertThat(cost(PLAIN.withRules(NEVER_TWO))).isGreaterThan(cost(PLAIN));
    assertThat(cost(PLAIN.withRules(Rule.atMost("any", 100, ALONE)))).isEqualTo(cost(PLAIN));
  }

  @Test
  void options_keep_them_too() {
    Options options =
        Composer.of(PLAIN.withRules(NEVER_TWO))
            .options(BRIEF, new OptionRule(3, 80, 1000), Budget.USUAL);

    assertThat(options).isInstanceOf(Options.Found.class);
    List<Options.Option> found = ((Options.Found) options).options();
    assertThat(found).hasSizeGreaterThan(1);
    assertThat(found)
        .allSatisfy(
            option ->
                assertThat(formats(option.composed().agenda()))
                    .doesNotContainSequence(Format.SOLO, Format.SOLO));
  }

  @Test
  void an_agenda_written_by_hand_is_told_which_rule_it_breaks() {
    Composer ours = Composer.of(PLAIN.withRules(NEVER_TWO, AT_MOST_ONE));

    Review review = ours.check(best(PLAIN), BRIEF);

    assertThat(review.remarks()).extracting(Review.Remark::rule).contains(8);
    assertThat(review.remarks())
        .extracting(Review.Remark::text)
        .contains(
            "\"The dots\" at minute 20 follows \"The silent-list\", against the rule \"never two silent exercises in a row\"; put another exercise or a break between them.",
            "\"The dots\" at minute 20 is one too many: the rule \"at most one silent exercise\" allows 1, and there are 2. Take another exercise.");
  }

  @Test
  void a_rule_becomes_sets_of_candidates_not_pairs() {
    Rule sameKind =
        Rule.neverNext(
            "never two of a kind", (exercise, people) -> exercise.kind(), Object::equals);

    Instance.Rules rules = answer(sameKind, AT_MOST_ONE).instance().rules();

    assertThat(rules.apart())
        .hasSize(5)
        .contains(
            new Instance.Apart(
                "never two of a kind",
                Set.of("dots", "sorting"),
                Set.of("dots", "sorting"),
                false));
    assertThat(rules.atMost())
        .containsExactly(
            new Instance.AtMost(
                "at most one silent exercise", Set.of("silent-list", "dots", "ballot"), 1));
  }

  @Test
  void a_rule_that_can_ask_for_nothing_is_dropped() {
    Rule none = Rule.neverInARow("never two of none", (exercise, people) -> false);
    Rule many = Rule.atMost("at most three silent ones", 3, ALONE);

    assertThat(answer(none, many).instance().rules()).isEqualTo(Instance.Rules.NONE);
  }

  @Test
  void a_rule_sees_exercises_with_the_people_who_do_them() {
    int[] asked = new int[1];
    Rule.Such watching =
        (Exercise exercise, int people) -> {
          asked[0] = people;
          return exercise.serves(people);
        };

    answer(Rule.atMost("watching", 100, watching));

    assertThat(asked[0]).isEqualTo(8);
  }

  private static Composition answer(Rule... rules) {
    return Composer.of(PLAIN.withRules(rules)).compose(BRIEF, Budget.USUAL);
  }

  private static Agenda best(Catalog catalog) {
    return composed(catalog).agenda();
  }

  private static ComposedAgenda composed(Catalog catalog) {
    return TestKit.of(catalog).brief(BRIEF).composes();
  }

  private static long cost(Catalog catalog) {
    return best(catalog).figures().cost().total();
  }

  private static List<Format> formats(Agenda agenda) {
    return agenda.activities().stream().map(Activity::format).toList();
  }
}
