package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.catalog;
import static org.arcwright.compose.reduce.Sample.only;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.Options.NotOne;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.OptionRule;
import org.junit.jupiter.api.Test;

class OptionsTest {
  private final Composer composer = Composer.of(only(Crowd.exercises(60)));

  @Test
  void options_keep_to_the_brief_and_share_little_enough() {
    Brief brief = brief(90).build();
    Found found = (Found) composer.options(brief, new OptionRule(3, 50, 50), Budget.USUAL);

    assertThat(found.best().agenda())
        .isEqualTo(((Composed) composer.compose(brief, Budget.USUAL)).agenda());
    for (int i = 0; i < found.options().size(); i++) {
      Composed composed = found.options().get(i).composed();
      assertThat(composed.proof().best()).isTrue();
      assertThat(composer.check(composed.agenda(), brief).fits()).isTrue();
      for (Options.Option earlier : found.options().subList(0, i)) {
        Set<String> shared = new HashSet<>(ids(composed.agenda()));
        Set<String> before = ids(earlier.composed().agenda());
        shared.retainAll(before);
        assertThat(shared.size()).isLessThanOrEqualTo(before.size() / 2);
      }
    }
  }

  @Test
  void a_profile_counts_what_its_agenda_shows() {
    Found found =
        (Found)
            Composer.of(catalog())
                .options(brief(90).build(), new OptionRule(1, 50, 25), Budget.USUAL);
    Agenda agenda = found.best().agenda();
    Profile profile = found.options().get(0).profile();

    Duration work =
        agenda.activities().stream().map(Activity::length).reduce(Duration.ZERO, Duration::plus);
    assertThat(profile.work()).isEqualTo(work);
    assertThat(profile.resting()).isEqualTo(agenda.end().minus(work));
    assertThat(profile.formats().values().stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(agenda.activities().size());
    assertThat(profile.energyFit()).isEqualTo(agenda.figures().energyFit());
    assertThat(profile.talking().plus(profile.alone())).isLessThanOrEqualTo(work);
  }

  @Test
  void a_catalog_with_too_little_says_why_there_are_no_more() {
    Found found =
        (Found)
            Composer.of(catalog())
                .options(brief(90).build(), new OptionRule(9, 0, 1000), Budget.USUAL);

    assertThat(found.options()).hasSizeLessThan(9);
    assertThat(found.end()).isNotIn(End.ENOUGH, End.STOPPED);
  }

  @Test
  void a_budget_that_is_too_small_is_told() {
    Options none =
        composer.options(
            brief(90).build(), new OptionRule(3, 50, 25), new Budget(1, Duration.ofSeconds(10)));

    assertThat(((NotOne) none).why()).isInstanceOf(Stopped.class);
  }

  private static Set<String> ids(Agenda agenda) {
    return agenda.activities().stream().map(Activity::exercise).collect(Collectors.toSet());
  }
}
