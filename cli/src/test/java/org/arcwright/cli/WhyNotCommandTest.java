package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
  void showsTheLineOfTheBriefThatLeavesItOut() {
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
  void showsWhatMovesAndWhatItCosts() {
    Run run = Run.of("why-not", agenda, "dot-voting", "--brief", brief);

    assertThat(run.code()).as(run.out() + run.err()).isLessThanOrEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("\"Dot voting\"").doesNotContain("label", "instance");
  }

  @Test
  void takesTheBriefThatTheAgendaCarries() {
    Run run = Run.of("why-not", agenda, "premortem");

    assertThat(run.out())
        .isEqualToNormalizingWhitespace(
            "\"Premortem\" is ruled out: left out by the brief. In the brief that is"
                + " wishes.leave-out.");
  }

  @Test
  void answersInJsonToo() {
    Run run = Run.of("why-not", agenda, "premortem", "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(WhyNotFormat.read("out.json", run.out()))
        .isEqualTo(
            new WhyNot.RuledOut(
                new LeftOut("premortem", "left out by the brief"),
                "wishes.leave-out",
                new Clash(List.of(), List.of(), true)));
  }

  @Test
  void refusesAnExerciseThatTheCatalogDoesNotHave() {
    Run run = Run.of("why-not", agenda, "premorten", "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err())
        .isEqualTo("\"premorten\": the catalog has no such exercise; perhaps premortem\n");
  }
}
