package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;

class SolutionFormatTest {
  private static final List<Item> ITEMS =
      List.of(
          new Item.Activity("two-objects", 0, 0, 15),
          new Item.Pause(15, 10),
          new Item.Activity("dot-voting", 1, 25, 20));

  @Test
  void the_best_has_a_cost_and_the_same_bound() {
    assertThat(SolutionFormat.write(new Solution(Status.OPTIMAL, 120, 77, 120, ITEMS, 9)))
        .isEqualTo(
            """
            {
              "format": "arcwright-solution",
              "version": 1,
              "status": "optimal",
              "cost": 120,
              "tie": 77,
              "bound": 120,
              "labels": 9,
              "items": [{"id": "two-objects", "phase": 0, "start": 0, "length": 15}, {"break": true, "start": 15, "length": 10}, {"id": "dot-voting", "phase": 1, "start": 25, "length": 20}]
            }
            """);
  }

  @Test
  void the_best_so_far_has_both() {
    assertThat(SolutionFormat.write(new Solution(Status.FEASIBLE, 120, 77, 100, ITEMS, 9)))
        .contains("\"status\": \"feasible\"", "\"cost\": 120", "\"bound\": 100");
  }

  @Test
  void where_nothing_fits_there_is_neither_cost_nor_bound() {
    assertThat(SolutionFormat.write(new Solution(Status.INFEASIBLE, 0, 0, 0, List.of(), 9)))
        .isEqualTo(
            """
            {
              "format": "arcwright-solution",
              "version": 1,
              "status": "infeasible",
              "labels": 9,
              "items": []
            }
            """);
  }

  @Test
  void where_the_limit_came_first_there_is_a_bound() {
    assertThat(SolutionFormat.write(new Solution(Status.STOPPED, 0, 0, 42, List.of(), 9)))
        .contains("\"status\": \"stopped\"", "\"bound\": 42")
        .doesNotContain("cost");
  }
}
