package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import org.junit.jupiter.api.Test;

/** What the small programs print. */
class ProgramsTest {
  @Test
  void the_embedded_composer_prints_when_each_exercise_starts() {
    assertThat(printed(() -> Embedded.main(new String[0])).lines())
        .hasSizeGreaterThan(5)
        .startsWith("0 min: Map of where we are")
        .endsWith("Proven best.");
  }

  @Test
  void own_rules_make_another_agenda_that_costs_more() {
    String printed = printed(() -> OwnRule.main(new String[0]));

    assertThat(printed).contains("Without rules (cost ", "With rules (cost ");
    assertThat(cost(printed, "With rules")).isGreaterThan(cost(printed, "Without rules"));
  }

  @Test
  void the_batch_says_what_came_of_it_and_how_fast() {
    assertThat(printed(() -> Batch.main(new String[] {"20"})))
        .matches(
            """
            20 briefs: \\d+ proven best, \\d+ fit nothing, \\d+ ended by the budget
            \\d+ a second on \\d+ processors, \\d+ s in all
            """);
  }

  private static int cost(String printed, String title) {
    return Integer.parseInt(printed.replaceAll("(?s).*" + title + " \\(cost (\\d+)\\).*", "$1"));
  }

  private static String printed(Runnable program) {
    PrintStream before = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    System.setOut(new PrintStream(out, true, UTF_8));
    try {
      program.run();
    } finally {
      System.setOut(before);
    }
    return out.toString(UTF_8);
  }
}
