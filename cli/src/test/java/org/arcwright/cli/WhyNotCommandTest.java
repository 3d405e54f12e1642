package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.format.WhyNotFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WhyNotCommandTest {
  @TempDir Path folder;
  private Path brief;
  private Path agenda;

  @BeforeEach
  void compose() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT + "wishes: {leave-out: [premortem]}\n");
    agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void shows_the_line_of_the_brief_that_leaves_it_out() {
    Run run = Run.of("why-not", agenda, "premortem", "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .isEqualToNormalizingWhitespace(
            "\"Premortem\" is ruled out: left out by the brief. In the brief that is"
                + " wishes.leave-out: "
                + brief
                + ", line 8.");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void shows_what_moves_and_what_it_costs() {
    Run run = Run.of("why-not", agenda, "dot-voting", "--brief", brief);

    assertThat(run.code()).as(run.out() + run.err()).isLessThanOrEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("\"Dot voting\"").doesNotContain("label", "instance");
  }

  @Test
  void takes_the_brief_that_the_agenda_carries() {
    Run run = Run.of("why-not", agenda, "premortem");

    assertThat(run.out())
        .isEqualToNormalizingWhitespace(
            "\"Premortem\" is ruled out: left out by the brief. In the brief that is"
                + " wishes.leave-out.");
  }

  @Test
  void answers_in_json_too() {
    Run run = Run.of("why-not", agenda, "premortem", "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(WhyNotFormat.read("out.json", run.out()))
        .isEqualTo(
            new WhyNot.RuledOut(
                new LeftOut("premortem", Optional.of("wishes.leave-out"), "left out by the brief"),
                new Clash(List.of(), List.of(), true)));
  }

  @Test
  void refuses_an_exercise_that_the_catalog_does_not_have() {
    Run run = Run.of("why-not", agenda, "premorten", "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err())
        .isEqualTo("\"premorten\": the catalog has no such exercise; perhaps premortem\n");
  }
}
