package org.arcwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which word a person may have meant. */
class NearestTest {
  private static final List<String> KNOWN =
      List.of(
          "dot-voting", "weighted-decision-matrix", "matrix-against-datum", "fist-to-five", "a");

  @ParameterizedTest
  @CsvSource({
    "dot-votingg, dot-voting",
    "dot-votign, dot-voting", // neighbours changed places
    "dotvoting, dot-voting",
    "fist-of-five, fist-to-five",
    "decision-matrix, weighted-decision-matrix", // all its parts are there
    "matrix, matrix-against-datum", // two have them; this is nearer
    "secret-dot-voting-by-hand, dot-voting", // it has all the parts of that
    "b, a",
  })
  void a_slip_or_a_part_leads_to_the_word(String word, String meant) {
    assertThat(Nearest.to(word, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @ValueSource(strings = {"premortem", "voting-booth", "xyz", "-", ""})
  void what_is_like_none_leads_nowhere(String word) {
    assertThat(Nearest.to(word, KNOWN.subList(0, 4))).isEmpty();
  }

  @Test
  void what_is_too_long_to_be_a_slip_is_not_looked_at() {
    assertThat(Nearest.to("dot-voting".repeat(9), KNOWN)).isEmpty();
  }
}
