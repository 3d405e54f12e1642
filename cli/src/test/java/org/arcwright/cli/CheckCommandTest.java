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
  void findsNothingInWhatWasComposed() {
    Run run = Run.of("check", agenda, "--brief", brief);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "The agenda keeps to its brief.\n", ""));
  }

  @Test
  void saysWhatAnAgendaBreaks() throws IOException {
    Path shorter = Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 60m"));

    Run run = Run.of("check", agenda, "--brief", shorter);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("the time at hand is 60");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void refusesWhatIsNoAgenda() throws IOException {
    Files.writeString(agenda, "{\"title\": 3}");

    Run run = Run.of("check", agenda, "--brief", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(agenda + ":1:");
  }

  @Test
  void takesTheBriefThatTheAgendaCarries() {
    Run run = Run.of("check", agenda);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "The agenda keeps to its brief.\n", ""));
  }

  @Test
  void needsABriefForAnAgendaByHand() throws IOException {
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
