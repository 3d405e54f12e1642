package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.arcwright.catalog.InvalidValueException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be asked of options. */
class OptionRuleTest {
  @ParameterizedTest
  @CsvSource({"1, 0, 0", "9, 99, 1000"})
  void both_ends_of_each_range_are_right(int count, int share, int within) {
    assertThatCode(() -> new OptionRule(count, share, within)).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 50, 25, options",
    "10, 50, 25, options",
    "5, -1, 25, share",
    "5, 100, 25, share",
    "5, 50, -1, within",
    "5, 50, 1001, within"
  })
  void beyond_them_is_refused_by_name(int count, int share, int within, String field) {
    assertThatThrownBy(() -> new OptionRule(count, share, within))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining(field)
        .hasMessageContaining("a whole number from");
  }

  @ParameterizedTest
  @CsvSource({"50, 4, 2", "50, 5, 2", "99, 100, 99", "0, 7, 0", "67, 3, 2"})
  void the_share_is_rounded_down(int share, int exercises, int most) {
    assertThat(new OptionRule(5, share, 25).mostShared(exercises)).isEqualTo(most);
  }

  @ParameterizedTest
  @CsvSource({"25, 100, 125", "25, 7, 8", "0, 100, 100", "1000, 3, 33", "25, 0, 0"})
  void the_ceiling_is_so_much_over_the_best_rounded_down(int within, long best, long ceiling) {
    assertThat(new OptionRule(5, 50, within).ceiling(best)).isEqualTo(ceiling);
  }
}
