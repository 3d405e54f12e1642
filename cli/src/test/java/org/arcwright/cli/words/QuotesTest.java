package org.arcwright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice of English printers; no source. */
class QuotesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Say \"go\" and drag. | Say “go” and drag.",
        "Ask \"What did you see?\" | Ask “What did you see?”",
        "(\"high, far right\"), \"so\" | (“high, far right”), “so”",
        "anyone's leave | anyone’s leave",
        "a board of 5\" by 7\" | a board of 5\" by 7\"",
        "one \" alone | one \" alone",
        "the groups' lists | the groups' lists",
        "x=\"y\" | x=\"y\""
      })
  void what_is_typed_is_set_as_in_print(String typed, String printed) {
    assertThat(Quotes.printed(typed)).isEqualTo(printed);
  }
}
