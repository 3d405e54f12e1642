package org.arcwright.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.CatalogSamples;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.SizeRange;
import org.junit.jupiter.api.Test;

/** A choice from a shelf. */
class SelectionTest {
  /** For 3 to 30 people, 5 to 10 minutes. */
  private static final Exercise PLENARY = CatalogSamples.exercise("plenary", Set.of("ideas"));

  /** For 4 to 30 people in fours or fives, 5 to 10 minutes. */
  private static final Exercise GROUPS =
      CatalogSamples.exercise(
          "groups",
          new SizeRange(4, 30),
          Optional.of(new SizeRange(4, 5)),
          PLENARY.steps(),
          Set.of("risks"));

  private static final Catalog CATALOG =
      Catalog.of(
          List.of(new Product("ideas", "ideas", "Many."), new Product("risks", "risks", "Some.")),
          List.of(),
          List.of(PLENARY, GROUPS),
          List.of());

  @Test
  void every_criterion_must_be_met() {
    assertThat(Selection.ALL.from(CATALOG)).containsExactly(GROUPS, PLENARY);
    assertThat(chosen(Selection.people("people", 7))).containsExactly(PLENARY);
    assertThat(chosen(Selection.yields("yields", "risks"))).containsExactly(GROUPS);
    assertThat(chosen(Selection.kind("kind", Set.of(Kind.DECISION)))).isEmpty();
    assertThat(chosen(Selection.people("people", 7), Selection.yields("yields", "risks")))
        .isEmpty();
  }

  @Test
  void minutes_are_met_if_any_length_between_is() {
    assertThat(chosen(Selection.minutes("m", minutes(10), minutes(30), 8))).hasSize(2);
    assertThat(chosen(Selection.minutes("m", minutes(10), minutes(30), 7))).hasSize(1);
    assertThat(chosen(Selection.minutes("m", minutes(11), minutes(30)))).isEmpty();
    assertThat(chosen(Selection.minutes("m", minutes(0), minutes(4)))).isEmpty();
  }

  @Test
  void words_of_the_page_are_found_in_any_case_and_order() {
    assertThat(chosen(Selection.text("text", "BEGIN let"))).hasSize(2);
    assertThat(chosen(Selection.text("text", "plenary talk"))).containsExactly(PLENARY);
    assertThat(chosen(Selection.text("text", "begin nowhere"))).isEmpty();
  }

  @Test
  void tools_count_where_it_can_be_run() {
    Set<Mode> anywhere = EnumSet.allOf(Mode.class);

    assertThat(chosen(Selection.tool("tool", "board", anywhere))).isEmpty();
    assertThat(chosen(Selection.withoutTools("tool", Set.of("board"), anywhere))).hasSize(2);
  }

  @Test
  void each_criterion_that_stands_in_the_way_is_named() {
    Selection selection =
        Selection.ALL
            .with(Selection.people("--people", 7))
            .with(Selection.yields("--yields", "risks"))
            .with(Selection.energy("--energy", 1, 5));

    assertThat(selection.without(CATALOG))
        .containsExactlyEntriesOf(sorted(Map.of("--people", 1, "--yields", 1)));
  }

  private static Map<String, Integer> sorted(Map<String, Integer> counts) {
    return new TreeMap<>(counts);
  }

  private static List<Exercise> chosen(Selection.Criterion... criteria) {
    Selection selection = Selection.ALL;
    for (Selection.Criterion criterion : criteria) {
      selection = selection.with(criterion);
    }
    return selection.from(CATALOG);
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
