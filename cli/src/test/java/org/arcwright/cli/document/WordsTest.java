package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  @ParameterizedTest
  @CsvSource({"0,0 min", "59,59 min", "60,1 h", "150,2 h 30 min", "480,8 h"})
  void says_hours_and_minutes(int minutes, String words) {
    assertThat(Words.untied(Words.time(minutes))).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"0,no breaks", "1,one break", "2,two breaks", "10,ten breaks", "1234,'1,234 breaks'"})
  void counts_in_words_up_to_ten(int number, String words) {
    assertThat(Words.count(number, "break", "breaks")).isEqualTo(words);
  }

  @Test
  void groups_digits() {
    assertThat(Words.grouped(0)).isEqualTo("0");
    assertThat(Words.grouped(999)).isEqualTo("999");
    assertThat(Words.grouped(1_234_567)).isEqualTo("1,234,567");
    assertThat(Words.grouped(-123)).isEqualTo("-123");
  }

  @Test
  void lists_with_an_and_before_the_last() {
    assertThat(Words.list(List.of("a"))).isEqualTo("a");
    assertThat(Words.list(List.of("a", "b"))).isEqualTo("a and b");
    assertThat(Words.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
  }

  @Test
  void says_levels_with_a_decimal_where_there_is_one() {
    assertThat(Words.level(30)).isEqualTo("3");
    assertThat(Words.level(34)).isEqualTo("3.4");
    assertThat(Words.level(4)).isEqualTo("0.4");
  }
}
