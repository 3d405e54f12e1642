package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.format.AgendaFile;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.WhyThisFormat;
import org.arcwright.library.BuiltIn;
import org.arcwright.standin.ToolVerdict;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An agenda for when a tool fails, as {@code compose --withstand} finds it. */
class WithstandTest {
  @TempDir Path folder;
  private Path brief;

  @BeforeEach
  void brief() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
  }

  private static String said(Run run) {
    return run.err().replaceAll("\\s+", " ");
  }

  @Test
  void it_says_how_many_cases_have_a_stand_in_and_stand_ins_names_them() {
    Path agenda = folder.resolve("agenda.json");

    Run run = Run.of("compose", brief, "--withstand", "board", "--out", agenda);
    AgendaFile file = AgendaFormat.read(agenda, BuiltIn.catalog());
    ToolVerdict verdict = file.withstands().orElseThrow();

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(verdict.tools()).containsExactly("board");
    assertThat(verdict.reached()).isTrue();
    assertThat(said(run))
        .contains(
            verdict.stops() == 0
                ? "No exercise here leans on the shared board."
                : "When the shared board fails, every exercise here goes on");
    assertThat(Run.of("standins", agenda, "--tool", "board").code()).isEqualTo(Exit.DONE);
  }

  @Test
  void where_none_is_like_that_the_tool_is_blamed_and_not_the_brief() {
    Run run = Run.of("compose", brief, "--withstand", "call", "--format", "json");
    ToolVerdict verdict =
        AgendaFormat.read("agenda.json", run.out(), BuiltIn.catalog()).withstands().orElseThrow();

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(verdict.reached()).isFalse();
    assertThat(verdict.reasons()).isNotEmpty();
    assertThat(said(run))
        .contains("No agenda was found in which every exercise goes on when the call fails.")
        .contains("for this reason: leans on the call")
        .doesNotContain("the brief leaves out");
  }

  /** Whether it goes on stands with the reasons, too, where a program reads it. */
  @Test
  void the_verdict_stands_in_the_json_of_reasons_as_well() {
    Run plain = Run.of("compose", brief, "--withstand", "call", "--format", "json");
    Run why = Run.of("compose", brief, "--withstand", "call", "--why", "--format", "json");

    assertThat(why.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(WhyThisFormat.read("why.json", why.out()).reasons()).isNotEmpty();
    String verdict = plain.out().substring(plain.out().indexOf("\"withstands\""));
    assertThat(why.out().replaceAll("\\s+", ""))
        .contains(verdict.substring(0, verdict.indexOf('}') + 1).replaceAll("\\s+", ""));
  }

  @Test
  void a_tool_that_nothing_leans_on_and_one_that_there_is_not() {
    assertThat(said(Run.of("compose", brief, "--withstand", "music")))
        .contains("No exercise here leans on the music. No agenda for this brief is better.");
    for (String wrong : List.of("bord", "board,musik")) {
      Run run = Run.of("compose", brief, "--withstand", wrong);
      assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
      assertThat(run.err()).contains("the catalog has no such tool; perhaps ");
    }
  }

  @Test
  void several_tools_fail_one_at_a_time() {
    Run run = Run.of("compose", brief, "--withstand", "board,poll,music");

    assertThat(said(run)).contains("the shared board, the poll or the music");
  }
}
