package org.arcwright.compose.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.junit.jupiter.api.Test;

/** Instances so small that the answer can be seen. */
class EnumerationTest {
  @Test
  void takes_the_cheaper_of_two() {
    assertThat(Enumeration.solve(draft(candidate("dear", 9), candidate("cheap", 2)).build()))
        .hasValueSatisfying(
            best -> {
              assertThat(best.cost()).isEqualTo(2);
              assertThat(best.items()).containsExactly(new Activity("cheap", 0, 0, 10));
            });
  }

  @Test
  void takes_the_least_tie_among_equal_costs() {
    assertThat(Enumeration.solve(draft(candidate("a", 2), candidate("b", 2)).build()))
        .hasValueSatisfying(
            best -> {
              assertThat(best.tie()).isEqualTo(Math.min(tieOf("a"), tieOf("b")));
              assertThat(best.cost()).isEqualTo(2);
            });
  }

  private static long tieOf(String id) {
    return Enumeration.solve(draft(candidate(id, 0)).build()).orElseThrow().tie();
  }

  @Test
  void takes_a_break_where_the_pin_leaves_time_for_nothing_else() {
    Draft draft =
        draft(candidate("first", 0), candidate("second", 0))
            .phases(List.of(phase(2)))
            .breakMinutes(10)
            .pins(new Pin("second", 20));
    assertThat(Enumeration.solve(draft.build()))
        .hasValueSatisfying(
            best ->
                assertThat(best.items())
                    .containsExactly(
                        new Activity("first", 0, 0, 10),
                        new Pause(10, 10),
                        new Activity("second", 0, 20, 10)));
  }

  @Test
  void says_that_nothing_fits() {
    assertThat(Enumeration.solve(draft(candidate("only", 0)).phases(List.of(phase(2))).build()))
        .isEmpty();
  }

  private static Draft draft(Candidate... candidates) {
    return new Draft(10, 40)
        .phases(List.of(phase(1)))
        .candidates(List.of(candidates))
        .weights(new Weights(0, 0, 0, 0, 0, 0, 0));
  }

  private static Phase phase(int count) {
    Bounds exactly = new Bounds(count, count);
    return new Phase("only", Set.of("any"), exactly, new Bounds(0, 40), 0, List.of());
  }

  private static Candidate candidate(String id, int cost) {
    return new Candidate(id, "any", List.of(10), List.of(0), 30, "any", List.of(), List.of(), cost);
  }
}
