package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Price;
import org.arcwright.format.BriefFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BriefsTest {
  private static List<Path> briefs() {
    return Repository.briefs();
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void composes_the_proven_best_and_it_keeps_to_its_brief(Path file) {
    Brief brief = BriefFormat.read(file, BuiltIn.catalog());
    Composer composer = Composer.of(BuiltIn.catalog());

    Composition answer = composer.compose(brief, Budget.USUAL);

    assertThat(answer).isInstanceOf(Composed.class);
    Composed composed = (Composed) answer;
    assertThat(composed.proof().best()).isTrue();
    assertThat(composer.check(composed.agenda(), brief).remarks()).isEmpty();
    Figures.Cost cost = composed.agenda().figures().cost();
    assertThat(cost.total()).isEqualTo(composed.proof().cost());
    assertThat(composed.prices().stream().mapToLong(Price::points).sum())
        .isEqualTo(cost.exercises());
  }

  @Test
  void they_show_different_goals_modes_sizes_and_days() {
    List<Brief> all =
        briefs().stream().map(file -> BriefFormat.read(file, BuiltIn.catalog())).toList();

    assertThat(all).extracting(Brief::goal).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(6);
    assertThat(all)
        .extracting(brief -> brief.mode().word())
        .contains("remote", "in-person", "hybrid");
    Set<Integer> sizes = new TreeSet<>();
    all.forEach(brief -> sizes.add(brief.group().count()));
    assertThat(sizes).contains(4, 9, 24);
    assertThat(all).anyMatch(brief -> brief.cap().toMinutes() == 60);
    assertThat(all).anyMatch(brief -> brief.cap().toHours() == 8 && !brief.meals().isEmpty());
  }
}
