package org.arcwright.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.SizeRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of thumb that a check is made of. */
class SmallRulesTest {
  /** Brysbaert (2019), Journal of Memory and Language 109: 183 words a minute aloud. */
  @Test
  void reading_aloud_takes_a_minute_for_183_words() {
    assertThat(ReadAloud.time(183)).isEqualTo(Duration.ofMinutes(1));
    assertThat(ReadAloud.time(366)).isEqualTo(Duration.ofMinutes(2));
    assertThat(ReadAloud.words("  One,\n two  three. ")).isEqualTo(3);
    assertThat(ReadAloud.words(" ")).isZero();
  }

  @Test
  void what_is_said_stands_in_quotes() {
    assertThat(ReadAloud.quoted("Say: \"Let us begin.\" Wait. Say: \"Now.\""))
        .isEqualTo("\"Let us begin.\" \"Now.\"");
    assertThat(ReadAloud.quoted("Nothing is said.")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0, 0 s", "70, 1 min 10 s", "120, 2 min", "3600, 1 h", "24000, 6 h 40 min"})
  void times_are_said_in_words(int seconds, String text) {
    assertThat(ReadAloud.text(Duration.ofSeconds(seconds))).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "3 30 3 5, ''",
    "3 30 4 5, '3, 6, 7 and 11 people cannot be split so; a max of 7 splits any number from 4 on'",
    "1 9 2 3, '1 person cannot be split so; start the range at 1, or raise people.min'",
    "1 9 3 5, '1 and 2 people cannot be split so; start the range at 1, or raise people.min'",
    "4 24 4 7, ''"
  })
  void group_sizes_that_leave_people_over_are_told(String sizes, String problem) {
    int[] n = Arrays.stream(sizes.split(" ")).mapToInt(Integer::parseInt).toArray();

    assertThat(GroupSizes.problem(new SizeRange(n[0], n[1]), new SizeRange(n[2], n[3])).orElse(""))
        .isEqualTo(problem);
  }

  /** What the message promises, for all sizes that occur. */
  @Test
  void a_max_of_twice_the_min_less_one_splits_any_number() {
    for (int min = 1; min <= 12; min++) {
      SizeRange group = new SizeRange(min, 2 * min - 1);
      assertThat(IntStream.rangeClosed(min, 300)).allMatch(group::splits);
    }
  }

  @Test
  void numbers_are_told_as_ranges() {
    assertThat(Ranges.of(List.of(1))).isEqualTo("1");
    assertThat(Ranges.of(List.of(1, 2, 5, 6, 7))).isEqualTo("1, 2 and 5-7");
    assertThat(Ranges.of(List.of(1, 3, 5, 7, 9))).isEqualTo("1, 3, 5, 7 and more");
  }

  @ParameterizedTest
  @CsvSource({
    "'Reed, A. (2001). Slips.', true",
    "'Reed, A. (n.d.). Slips.', true",
    "'Reed, A. Slips.', false"
  })
  void a_citation_has_a_year(String citation, boolean dated) {
    assertThat(Citations.isDated(citation)).isEqualTo(dated);
  }
}
