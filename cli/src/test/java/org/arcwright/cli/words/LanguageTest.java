package org.arcwright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sentences, numbers, dates and times of day, as people of the locale write them. */
class LanguageTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 2);
  private static final LocalTime TIME = LocalTime.of(14, 5);

  private static Language language(String tag) {
    return Language.of(tag).orElseThrow();
  }

  /** Long dates and short times as the Unicode locale data (CLDR) has them. */
  @Test
  void german_dates_numbers_and_lists() {
    Language german = language("de");

    assertThat(german.tag()).isEqualTo("de");
    assertThat(german.date(DAY)).isEqualTo("Dienstag, 2. März 2027");
    assertThat(german.day(DAY)).isEqualTo("2. März 2027");
    assertThat(german.clock(TIME)).isEqualTo("14:05");
    assertThat(german.level(34)).isEqualTo("3,4");
    assertThat(german.time(Duration.ofMinutes(160))).isEqualTo("2\u00a0h\u00a040\u00a0min");
    assertThat(german.list(List.of("Stifte", "Karten", "Punkte")))
        .isEqualTo("Stifte, Karten und Punkte");
    assertThat(german.say("people", 1)).isEqualTo("eine Person");
    assertThat(german.say("people", 12)).isEqualTo("12 Personen");
  }

  @Test
  void a_region_has_dates_of_its_own() {
    assertThat(language("de-AT").date(LocalDate.of(2027, 1, 5)))
        .isEqualTo("Dienstag, 5. Jänner 2027");
    assertThat(language("en-US").date(DAY)).isEqualTo("Tuesday, March 2, 2027");
    assertThat(language("en").day(DAY)).isEqualTo("2 March 2027");
  }

  @Test
  void a_language_without_a_bundle_is_none() {
    assertThat(Language.of("fr")).isEmpty();
    assertThat(Language.of("")).isEmpty();
  }

  /** Unicode Standard Annex 9, 6.3: isolates for text whose direction is not known beforehand. */
  @Test
  void what_runs_the_other_way_is_set_apart() {
    String hebrew = "\u05e9\u05dc\u05d5\u05dd";
    String override = "plan \u202Edrawkcab";

    assertThat(language("en").say("report.with", hebrew, "Mara"))
        .isEqualTo("\u2068" + hebrew + "\u2069 (Mara)");
    assertThat(language("de").say("report.with", "Pläne", override))
        .isEqualTo("Pläne (\u2068" + override + "\u2069)");
    assertThat(language("en").say("report.with", "Pläne 12:30", "9")).isEqualTo("Pläne 12:30 (9)");
  }
}
