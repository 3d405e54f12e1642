package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  @Test
  void withoutACommandThereIsShortHelp() {
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
  void eachCommandExplainsItself(String command) {
    Run run = Run.of(command, "--help");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("Usage: arcwright " + command);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"export", "import"})
  void soDoesEachCommandForCatalogs(String command) {
    Run run = Run.of("catalog", command, "--help");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("Usage: arcwright catalog " + command);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Run.of("catalog").out()).contains(command);
  }

  @Test
  void theVersionIsTheBuilds() {
    assertThat(Run.of("--version").out()).matches("arcwright \\d+\\.\\d+\\.\\d+.*\n");
  }
}
