package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalTest {
  @ParameterizedTest
  @CsvSource({"120,120", "' 90 ',90", "'',80", "x,80", "5,60", "9999,160", "-1,60"})
  void keeps_the_width_within_reason(String columns, int width) {
    assertThat(Terminal.width(columns, 80)).isEqualTo(width);
  }
}
