package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir Path folder;
  private Path brief;
  private Path agenda;

  @BeforeEach
  void compose() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
    agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void finds_nothing_in_what_was_composed() {
    Run run = Run.of("check", agenda, "--brief", brief);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "The agenda keeps to its brief.\n", ""));
  }

  @Test
  void says_what_an_agenda_breaks() throws IOException {
    Path shorter = Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 60m"));

    Run run = Run.of("check", agenda, "--brief", shorter);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("the time at hand is 60");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void refuses_what_is_no_agenda() throws IOException {
    Files.writeString(agenda, "{\"title\": 3}");

    Run run = Run.of("check", agenda, "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(agenda + ":1:");
  }

  @Test
  void takes_the_brief_that_the_agenda_carries() {
    Run run = Run.of("check", agenda);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "The agenda keeps to its brief.\n", ""));
  }

  @Test
  void needs_a_brief_for_an_agenda_by_hand() throws IOException {
    Files.writeString(
        agenda,
        """
        {"format": "arcwright-agenda", "version": 1, "title": "By hand", "goal": "generate-ideas",
         "mode": "remote", "people": 8,
         "items": [{"exercise": "chat-burst", "title": "Chat burst", "phase": "gather", "length": 10}]}
        """);

    Run run = Run.of("check", agenda);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains(agenda.toString()).contains("--brief");
  }
}
