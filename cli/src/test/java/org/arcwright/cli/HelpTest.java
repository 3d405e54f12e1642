package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  @Test
  void without_a_command_there_is_short_help() {
    Run run = Run.of();

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("compose", "solve", "check", "Exit codes: 0 done");
    assertThat(run.out().lines().count()).isLessThan(40);
    assertThat(run).isEqualTo(Run.of("--help"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compose",
        "solve",
        "check",
        "forecast",
        "replan",
        "live",
        "brief",
        "catalog",
        "schema"
      })
  void each_command_explains_itself(String command) {
    Run run = Run.of(command, "--help");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("Usage: arcwright " + command);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"export", "import"})
  void so_does_each_command_for_catalogs(String command) {
    Run run = Run.of("catalog", command, "--help");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("Usage: arcwright catalog " + command);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Run.of("catalog").out()).contains(command);
  }

  @Test
  void the_version_is_the_builds() {
    assertThat(Run.of("--version").out()).matches("arcwright \\d+\\.\\d+\\.\\d+.*\n");
  }
}
