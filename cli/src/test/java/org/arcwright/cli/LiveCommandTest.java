package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys and screens are {@link LiveDeskTest}'s. */
class LiveCommandTest {
  @TempDir Path folder;

  @Test
  void whereThereIsNoTerminalNothingIsBegun() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    Path agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);

    Run run = Run.of("live", agenda);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("live needs a terminal that it can draw upon");
    assertThat(folder.resolve("agenda.jsonl")).doesNotExist();
  }
}
