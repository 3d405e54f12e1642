package org.arcwright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Oddities;
import org.arcwright.brief.Oddity;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;

/** What is odd in a brief is said in the language of the documents, with its reason. */
class OddWordsTest {
  private static final ZonedDateTime SATURDAY =
      ZonedDateTime.of(2027, 3, 6, 6, 30, 0, 0, ZoneId.of("Europe/Vienna"));
  private static final Wishes WISHES =
      new Wishes(
          Set.of("world-cafe-ideas", "walk-in-pairs", "dot-voting"),
          Set.of(),
          List.of(),
          Set.of("dot-voting"));

  private static final List<Brief> ODD =
      List.of(
          Brief.builder("Odd", "generate-ideas", Mode.REMOTE, 2, Duration.ofHours(7))
              .start(SATURDAY)
              .zones(List.of(ZoneId.of("America/Lima")))
              .tools(List.of("wall", "paper"))
              .rhythm(new Rhythm(Duration.ZERO, Duration.ofMinutes(90), Duration.ofMinutes(3)))
              .bufferPercent(5)
              .given(List.of("idea-pool"))
              .wishes(WISHES)
              .build(),
          Brief.builder("Odd", "generate-ideas", Mode.REMOTE, 40, Duration.ofHours(3))
              .acquaintance(Acquaintance.STRANGERS)
              .openness(2)
              .start(SATURDAY.plusDays(1).withHour(20))
              .rhythm(new Rhythm(Duration.ZERO, Duration.ofMinutes(60), Duration.ZERO))
              .meal(
                  new Meal(Duration.ofMinutes(60), Duration.ofMinutes(60), Duration.ofMinutes(20)))
              .ownItem(
                  new OwnItem(
                      "talk",
                      "A guest speaks",
                      Duration.ofMinutes(100),
                      Optional.empty(),
                      Optional.<Moment>empty(),
                      2,
                      Format.PLENARY))
              .build());

  @Test
  void english_says_what_the_remark_says_and_german_says_it_in_german() {
    Language english = Language.of("en").orElseThrow();
    Language german = Language.of("de").orElseThrow();
    Set<String> names = new TreeSet<>();
    for (Brief brief : ODD) {
      for (Oddity oddity : Oddities.of(brief, BuiltIn.catalog())) {
        names.add(oddity.name());
        Object[] details = oddity.details().toArray();
        assertThat(english.say("odd." + oddity.name(), details)).isEqualTo(oddity.remark());
        assertThat(german.say("odd." + oddity.name(), details)).isNotEqualTo(oddity.remark());
      }
    }

    assertThat(names)
        .contains(
            "few-people",
            "many-at-screens",
            "open-strangers",
            "long-at-screens",
            "no-meal",
            "saturday",
            "sunday",
            "early",
            "late",
            "night",
            "no-call",
            "nothing-remote",
            "no-breaks",
            "long-stretch",
            "short-break",
            "short-meal",
            "small-buffer",
            "given-goal",
            "wrong-size",
            "much-of-ones-own",
            "any-time");
  }
}
