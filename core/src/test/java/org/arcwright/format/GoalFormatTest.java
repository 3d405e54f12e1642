package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoalFormatTest {
  private static final String FILE =
      """
      id: find-the-risks
      title: Find the risks
      purpose: A plan stands.
      given: [question]
      yields: [risks]
      cautions: [No blame.]
      arc:
        - name: open
          title: Arrive
          kinds: [icebreaker]
          count: [1, 2]
          share: [5, 15, 25]
        - name: foresee
          title: Think of what could go wrong
          kinds: [divergent, convergent]
          count: [1, 4]
          share: [40, 85, 95]
          yields: [risks]
      """;

  private static final Goal READ =
      new Goal(
          "find-the-risks",
          "Find the risks",
          "A plan stands.",
          Set.of("risks"),
          Set.of("question"),
          List.of("No blame."),
          List.of(
              new Phase(
                  "open",
                  "Arrive",
                  Set.of(Kind.ICEBREAKER),
                  1,
                  2,
                  new Phase.Share(5, 15, 25),
                  Set.of()),
              new Phase(
                  "foresee",
                  "Think of what could go wrong",
                  Set.of(Kind.DIVERGENT, Kind.CONVERGENT),
                  1,
                  4,
                  new Phase.Share(40, 85, 95),
                  Set.of("risks"))));

  @Test
  void every_key_leads_to_its_place_in_the_model() {
    assertThat(CatalogFormat.readGoal("goal.yaml", FILE)).isEqualTo(READ);
  }

  @Test
  void what_is_written_is_read_as_the_same_goal() {
    assertThat(CatalogFormat.readGoal("goal.yaml", CatalogFormat.write(READ))).isEqualTo(READ);
  }

  @Test
  void an_arc_without_a_phase_is_told_in_words() {
    String file = FILE.substring(0, FILE.indexOf("arc:")) + "arc: []\n";

    assertThat(Complaints.of(() -> CatalogFormat.readGoal("g.yaml", file)))
        .contains("g.yaml:7:6: arc, empty: a goal is reached in phases; list 1 to 15");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "count: [1, 2] ~ count: [2, 1] ~ 11:12: count, [2, 1]: write them ascending: fewest, most",
        "count: [1, 2] ~ count: 2 ~ 11:12: count, 2: a list is right, such as [a, b]",
        "share: [5, 15, 25] ~ share: [5, 15] ~ 12:12: share, 2 values: 3 are right, such as [5, 10, 20]",
        "share: [5, 15, 25] ~ share: [25, 15, 5] ~ 12:12: share, [25, 15, 5]: write them ascending: min, target, max",
        "kinds: [icebreaker] ~ kinds: [ice-breaker] ~ 10:13: kinds, ice-breaker: perhaps icebreaker",
        "- name: foresee ~ - name: open ~ 13:11: arc, open: it stands here twice; name it once",
        "yields: [risks] ~ yields: [risk] ~ 5:10: yields, risks: a phase of the arc must leave it; add it to that phase's yields",
      })
  void a_fault_is_told_at_its_place(String text, String faulty, String complaint) {
    String file = FILE.replace("  " + text, "  " + faulty);

    assertThat(Complaints.of(() -> CatalogFormat.readGoal("g.yaml", file)))
        .contains("g.yaml:" + complaint);
  }
}
