package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

class SpansTest {
  @ParameterizedTest
  @CsvSource({"10s,10000", "500ms,500", "2m,120000", "1m30s,90000", "1h,3600000", "24h,86400000"})
  void reads_numbers_with_units(String text, long millis) {
    assertThat(new Spans().convert(text).toMillis()).isEqualTo(millis);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "10",
        "s",
        "0s",
        "-1s",
        "1.5s",
        "10 s",
        "10x",
        "24h1ms",
        "99999999999h",
        "1s2"
      })
  void refuses_all_else(String text) {
    assertThatThrownBy(() -> new Spans().convert(text))
        .isInstanceOf(TypeConversionException.class)
        .hasMessageContaining("\"" + text + "\" is no time");
  }
}
