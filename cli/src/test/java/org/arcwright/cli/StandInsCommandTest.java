package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.arcwright.format.StandInsFormat;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.ToolLoss;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StandInsCommandTest {
  @TempDir Path folder;
  private Path agenda;

  @BeforeEach
  void compose() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
  }

  private StandIns found() {
    Run run = Run.of("standins", agenda, "--format", "json");
    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    return StandInsFormat.read("s.json", run.out());
  }

  @Test
  void says_for_each_tool_what_stops_and_what_stands_in() {
    StandIns found = found();
    Run run = Run.of("standins", agenda);

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(found.tools()).isNotEmpty();
    assertThat(run.out())
        .contains(found.covered() + " of " + found.pairs() + " have a stand-in")
        .contains("Without the call")
        .contains("If fewer people come", "If the sponsor does not come")
        .contains("If the producer does not come");
    for (ToolLoss loss : found.tools()) {
      loss.swaps().stream()
          .flatMap(swap -> swap.standIn().stream())
          .forEach(other -> assertThat(run.out()).contains("[" + other.exercise() + "]"));
    }
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void without_a_producer_somebody_else_does_what_pages_leave_to_one() {
    assertThat(Run.of("standins", agenda).out().replaceAll("\\s+", " "))
        .contains(
            "If the producer does not come - Where a page leaves something to the producer, such as"
                + " counting or reading back, ask one of the group");
  }

  @Test
  void says_plainly_where_nothing_stands_in_and_what_to_do_then() {
    Run run = Run.of("standins", agenda, "--tool", "call");

    assertThat(run.out())
        .contains("exercises stop, and nothing stands in.", "Open another call")
        .doesNotContain("If fewer people come");
  }

  @Test
  void a_tool_that_nothing_leans_on_is_no_trouble() {
    assertThat(Run.of("standins", agenda, "--tool", "flipchart").out())
        .contains("No exercise leans on the flipchart: go on.");
  }

  @Test
  void refuses_a_tool_that_there_is_not() {
    Run run = Run.of("standins", agenda, "--tool", "bord");

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("\"bord\": the catalog has no such tool; perhaps board");
  }
}
