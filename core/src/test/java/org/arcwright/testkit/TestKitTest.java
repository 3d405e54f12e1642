package org.arcwright.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Format;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;

class TestKitTest {
  private final TestKit kit = TestKit.of(Sample.catalog());

  @Test
  void what_is_as_expected_passes() {
    kit.brief(Sample.brief(90).build())
        .composes()
        .uses("one-word")
        .has("an opening", activity -> activity.phase().equals("open"))
        .never("a race", activity -> activity.exercise().equals("the-race"))
        .neverInARow("breakouts", activity -> activity.format() == Format.SMALL_GROUPS)
        .provenWithin(1_000_000);
    kit.brief(Sample.brief(25).build()).fitsNothing().saying("25");
    kit.allCompose(List.of(Sample.brief(90).build(), Sample.brief(120).build()));
  }

  @Test
  void a_brief_that_does_not_compose_is_told_with_the_reasons() {
    assertThatThrownBy(() -> kit.brief(Sample.brief(25).build()).composes())
        .isInstanceOf(AssertionError.class)
        .hasMessageStartingWith(
            "Brief \"Where to meet\": an agenda was expected, but nothing fits: ")
        .hasMessageContaining("25");
  }

  @Test
  void a_budget_that_ends_first_is_told() {
    TestKit hasty = kit.within(new Budget(1, Duration.ofSeconds(10)));

    assertThatThrownBy(() -> hasty.brief(Sample.brief(90).build()).composes())
        .hasMessageContaining("the budget ended before anything was found or ruled out");
    assertThatThrownBy(() -> hasty.brief(Sample.brief(90).build()).fitsNothing())
        .hasMessageContaining("the budget ended before anything was found or ruled out");
  }

  @Test
  void an_agenda_where_none_was_expected_is_shown() {
    assertThatThrownBy(() -> kit.brief(Sample.brief(90).build()).fitsNothing())
        .hasMessageContaining("but there is an agenda: 0 ");
  }

  @Test
  void a_reason_that_is_not_given_is_missed() {
    NoAgenda nothing = kit.brief(Sample.brief(25).build()).fitsNothing();

    assertThatThrownBy(() -> nothing.saying("the moon"))
        .hasMessageContaining("a reason with \"the moon\" was expected, but they are: ");
  }

  @Test
  void what_the_agenda_lacks_or_has_too_much_is_told() {
    ComposedAgenda agenda = kit.brief(Sample.brief(90).build()).composes();

    assertThatThrownBy(() -> agenda.uses("the-moon"))
        .hasMessageContaining("the exercise the-moon is missing. The agenda: 0 ");
    assertThatThrownBy(() -> agenda.never("a close", activity -> activity.phase().equals("close")))
        .hasMessageContaining("a close is in it, at ");
    assertThatThrownBy(() -> agenda.provenWithin(1)).hasMessageContaining("labels, over 1");
  }

  /** The agenda's own items say which two stand in a row. */
  @Test
  void two_in_a_row_are_told_and_a_break_between_counts_unless_it_must_not() {
    ComposedAgenda agenda = kit.brief(Sample.brief(120).build()).composes();
    List<Activity> activities = agenda.agenda().activities();
    int gap = 0;
    while (activities.get(gap).end().equals(activities.get(gap + 1).start())) {
      gap++;
    }
    List<Activity> around = activities.subList(gap, gap + 2);

    assertThat(agenda.neverInARow("of these", around::contains)).isSameAs(agenda);
    assertThatThrownBy(() -> agenda.neverInARowEvenAcrossBreaks("of these", around::contains))
        .hasMessageContaining("two of these in a row, at ");
    assertThatThrownBy(() -> agenda.neverInARow("exercises", activity -> true))
        .hasMessageContaining("two exercises in a row, at ");
  }

  @Test
  void the_answer_itself_is_at_hand() {
    assertThat(kit.brief(Sample.brief(90).build()).answer()).isInstanceOf(Composed.class);
    assertThat(kit.brief(Sample.brief(25).build()).fitsNothing().answer().reasons()).isNotEmpty();
  }
}
