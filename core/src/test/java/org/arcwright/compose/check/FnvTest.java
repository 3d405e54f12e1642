package org.arcwright.compose.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The 32-bit FNV-1a test vectors of RFC 9923 (first in draft-eastlake-fnv). */
class FnvTest {
  @ParameterizedTest
  @CsvSource({"'', 811c9dc5", "a, e40c292c", "foobar, bf9cf968"})
  void hashes_as_published(String text, String hex) {
    assertThat(Fnv.hash(text)).isEqualTo(Long.parseLong(hex, 16));
  }

  @ParameterizedTest
  @CsvSource({"'', 050c5d1f", "a, 2b24d044", "foobar, 0c1c9eb8"})
  void hashes_as_published_with_a_closing_zero(String text, String hex) {
    assertThat(Fnv.hash(text + '\0')).isEqualTo(Long.parseLong(hex, 16));
  }
}
