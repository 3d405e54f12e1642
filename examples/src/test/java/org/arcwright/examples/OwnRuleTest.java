package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.library.BuiltIn;
import org.arcwright.testkit.ComposedAgenda;
import org.arcwright.testkit.TestKit;
import org.junit.jupiter.api.Test;

/** How a firm tests its catalog and its rules: with the test kit, brief by brief. */
class OwnRuleTest {
  private static final List<Brief> BRIEFS =
      Stream.of(120, 150, 180, 210, 240)
          .map(
              cap ->
                  Brief.builder(
                          "What next?",
                          "choose-a-direction",
                          Mode.REMOTE,
                          9,
                          Duration.ofMinutes(cap))
                      .build())
          .toList();

  @Test
  void our_briefs_compose_and_keep_our_rules() {
    TestKit kit = TestKit.of(OwnRule.catalog());
    for (Brief brief : BRIEFS) {
      ComposedAgenda agenda =
          kit.brief(brief).composes().neverInARow("silent exercises", is(Format.SOLO));
      assertThat(plenaries(agenda)).isLessThanOrEqualTo(2);
    }
  }

  @Test
  void without_the_rules_some_would_not() {
    TestKit kit = TestKit.of(BuiltIn.catalog());

    assertThat(BRIEFS).anyMatch(brief -> plenaries(kit.brief(brief).composes()) > 2);
  }

  private static Predicate<Activity> is(Format format) {
    return activity -> activity.format() == format;
  }

  private static long plenaries(ComposedAgenda agenda) {
    return agenda.agenda().activities().stream().filter(is(Format.PLENARY)).count();
  }
}
