package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution;
import org.arcwright.format.SolutionFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SolveCommandTest {
  /** One phase, one exercise of 10 or 15 minutes, half an hour; no break is needed. */
  private static final String INSTANCE =
      """
      {"grid": 5, "cap": 30, "curve": [30, 30, 30, 30, 30, 30],
       "stretch": {"min": 0, "max": 30}, "breakMinutes": 10, "meals": [], "bufferPercent": 0,
       "products": ["names"], "initial": [],
       "phases": [{"name": "open", "kinds": ["A"], "count": [1, 1], "minutes": [5, 20],
                   "target": 15, "yields": ["names"]}],
       "candidates": [{"id": "round", "kind": "A", "lengths": [10, 15], "lengthCosts": [0, 5],
                       "energy": 20, "format": "P", "needs": [], "yields": ["names"], "cost": 7}],
       "include": [], "pins": [], "weights": {"energy": 1, "share": 10, "idle": 2}}
      """;

  @TempDir Path folder;

  @Test
  void prints_the_solution_as_json() throws IOException {
    Run run = solve(INSTANCE);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    // 15 minutes: own 7, length 5, energy 15 x 10 = 150, share 0, idle 2 x 15 = 30.
    // 10 minutes: own 7, length 0, energy 10 x 10 = 100, share 10 x 5 = 50, idle 2 x 20 = 40.
    Solution solution = SolutionFormat.read("out", run.out());
    assertThat(solution.status()).isEqualTo(Solution.Status.OPTIMAL);
    assertThat(solution.cost()).isEqualTo(192);
    assertThat(solution.bound()).isEqualTo(192);
    assertThat(solution.items()).containsExactly(new Item.Activity("round", 0, 0, 15));
  }

  @Test
  void infeasible_is_an_answer() throws IOException {
    Run run = solve(INSTANCE.replace("\"count\": [1, 1]", "\"count\": [2, 2]"));

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("\"status\": \"infeasible\"");
  }

  @Test
  void refuses_a_broken_instance_with_its_place() throws IOException {
    Run run = solve(INSTANCE.replace("\"cap\": 30", "\"cap\": 32"));

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("instance.json:1:").contains("32");
  }

  private Run solve(String text) throws IOException {
    return Run.of("solve", Files.writeString(folder.resolve("instance.json"), text));
  }
}
