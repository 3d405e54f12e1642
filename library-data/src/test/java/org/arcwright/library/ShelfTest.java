package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Suitability;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the shelf promises to those who work from it. */
class ShelfTest {
  private static final Collection<Exercise> SHELF = BuiltIn.catalog().exercises().values();
  private static final int FEWEST = 3;
  private static final int MOST = 200;

  /** Read aloud, words a minute: Brysbaert (2019), Journal of Memory and Language 109. */
  private static final int WORDS_ALOUD = 183;

  @ParameterizedTest
  @CsvSource({
    "ICEBREAKER, 35",
    "DIVERGENT, 40",
    "CONVERGENT, 35",
    "DECISION, 25",
    "REFLECTION, 25"
  })
  void each_kind_is_well_stocked(Kind kind, int least) {
    assertThat(of(kind)).hasSizeGreaterThanOrEqualTo(least);
  }

  @Test
  void there_are_fourteen_goals_and_a_hundred_and_sixty_exercises() {
    assertThat(BuiltIn.catalog().goals()).hasSize(14);
    assertThat(SHELF).hasSizeGreaterThanOrEqualTo(160);
  }

  @ParameterizedTest
  @EnumSource
  void each_kind_serves_every_number_of_people_from_3_to_200(Kind kind) {
    assertThat(IntStream.rangeClosed(FEWEST, MOST).filter(n -> !isServed(kind, n))).isEmpty();
  }

  private static boolean isServed(Kind kind, int people) {
    return of(kind).stream().anyMatch(exercise -> exercise.serves(people));
  }

  @Test
  void every_length_from_3_to_120_minutes_can_be_filled() {
    List<Minutes> lengths =
        SHELF.stream()
            .flatMap(
                exercise ->
                    IntStream.rangeClosed(FEWEST, MOST)
                        .filter(exercise::serves)
                        .mapToObj(exercise::minutes))
            .distinct()
            .toList();

    assertThat(IntStream.rangeClosed(3, 120).mapToObj(Duration::ofMinutes))
        .allMatch(length -> lengths.stream().anyMatch(range -> holds(range, length)));
  }

  @Test
  void each_exercise_lasts_3_to_120_minutes_whatever_the_number() {
    for (Exercise exercise : SHELF) {
      IntStream.rangeClosed(exercise.people().min(), exercise.people().max())
          .forEach(
              n ->
                  assertThat(exercise.minutes(n).typical())
                      .as(exercise.id() + " with " + n + " people")
                      .isBetween(Duration.ofMinutes(3), Duration.ofMinutes(120)));
    }
  }

  @ParameterizedTest
  @EnumSource
  void every_format_occurs_often(Format format) {
    assertThat(SHELF)
        .filteredOn(e -> e.steps().stream().anyMatch(step -> step.format() == format))
        .hasSizeGreaterThanOrEqualTo(20);
  }

  @Test
  void every_openness_occurs_where_people_meet_and_where_they_look_back() {
    for (int openness = 0; openness <= 3; openness++) {
      int level = openness;
      assertThat(of(Kind.ICEBREAKER)).anyMatch(e -> e.openness() == level);
      assertThat(of(Kind.REFLECTION)).anyMatch(e -> e.openness() == level);
    }
  }

  @ParameterizedTest
  @CsvSource({"REMOTE, call", "IN_PERSON, paper"})
  void each_kind_does_with_the_barest_tools(Mode mode, String tool) {
    for (Kind kind : Kind.values()) {
      for (int people : new int[] {3, 5, 8, 12}) {
        assertThat(of(kind))
            .as(kind + " with " + people + " people and " + tool)
            .filteredOn(e -> e.serves(people) && does(e.in(mode), tool))
            .hasSizeGreaterThanOrEqualTo(2);
      }
    }
  }

  private static boolean does(Suitability suitability, String tool) {
    return suitability.fit() >= 2 && Set.of(tool).containsAll(suitability.tools());
  }

  @Test
  void what_is_good_at_a_screen_fits_a_stretch_there() {
    for (Exercise exercise : SHELF) {
      if (exercise.in(Mode.REMOTE).fit() >= 2) {
        IntStream.rangeClosed(5, 15)
            .filter(exercise::serves)
            .forEach(
                n ->
                    assertThat(exercise.minutes(n).typical())
                        .as(exercise.id() + " with " + n + " people")
                        .isLessThanOrEqualTo(Duration.ofMinutes(50)));
      }
    }
  }

  @Test
  void the_opening_can_be_said_in_the_first_step() {
    for (Exercise exercise : SHELF) {
      int words = exercise.opening().split("\\s+").length;
      double minutes = exercise.steps().get(0).minutes().typical().toSeconds() / 60.0;

      assertThat(words).as(exercise.id()).isLessThanOrEqualTo((int) (WORDS_ALOUD * minutes));
    }
  }

  @Test
  void each_page_is_complete() {
    for (Exercise exercise : SHELF) {
      assertThat(exercise.notes().watch()).as(exercise.id()).hasSizeBetween(1, 3);
      assertThat(exercise.care().access()).as(exercise.id()).hasSizeBetween(1, 3);
      assertThat(exercise.notes().tips()).as(exercise.id()).hasSizeLessThanOrEqualTo(3);
      assertThat(exercise.care().cautions().isEmpty() || exercise.care().optOut().isPresent())
          .as(exercise.id() + " has cautions and no opt-out")
          .isTrue();
    }
  }

  /** Cautions that people cannot judge for themselves send them to somebody who can. */
  @Test
  void what_moves_bodies_or_asks_for_disclosure_names_the_professional() {
    for (Exercise exercise : SHELF) {
      if (exercise.moves() || exercise.openness() >= 2) {
        String cautions =
            Arrays.stream(Mode.values())
                .flatMap(mode -> exercise.cautions(mode).stream())
                .collect(Collectors.joining(" "));
        assertThat(cautions).as(exercise.id()).contains("licensed professional");
      }
    }
  }

  @Test
  void a_source_says_who_and_when() {
    for (Exercise exercise : SHELF) {
      if (exercise.source() instanceof Source.Published published) {
        assertThat(published.citation())
            .as(exercise.id())
            .containsPattern("\\((17|18|19|20)\\d\\d|\\(n\\.d\\.");
      } else if (exercise.source() instanceof Source.Memory memory) {
        assertThat(memory.citation())
            .as("%s, whose mark says already that it is from memory", exercise.id())
            .isNotBlank()
            .doesNotContainIgnoringCase("from memory");
      }
    }
  }

  @Test
  void titles_are_told_apart() {
    assertThat(SHELF).extracting(Exercise::title).doesNotHaveDuplicates();
  }

  @Test
  void every_word_is_used() {
    Map<String, Long> uses =
        SHELF.stream()
            .flatMap(e -> e.yields().stream())
            .collect(Collectors.groupingBy(product -> product, Collectors.counting()));

    assertThat(uses.keySet())
        .containsExactlyInAnyOrderElementsOf(BuiltIn.catalog().products().keySet());
  }

  private static boolean holds(Minutes range, Duration length) {
    return range.min().compareTo(length) <= 0 && length.compareTo(range.max()) <= 0;
  }

  private static List<Exercise> of(Kind kind) {
    return SHELF.stream().filter(exercise -> exercise.kind() == kind).toList();
  }
}
