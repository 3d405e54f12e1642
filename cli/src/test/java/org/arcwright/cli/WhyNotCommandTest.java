package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
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
            "\"Premortem\" is ruled out: left out by the brief. That is wishes.leave-out in the"
                + " brief: "
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
  void refusesAnExerciseThatTheCatalogDoesNotHave() {
    Run run = Run.of("why-not", agenda, "premorten", "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err())
        .isEqualTo("\"premorten\": the catalog has no such exercise; perhaps premortem\n");
  }
}
