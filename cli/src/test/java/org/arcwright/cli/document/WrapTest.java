package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrapTest {
  @Test
  void breaks_between_words() {
    assertThat(Wrap.lines("one two three four", 9)).containsExactly("one two", "three", "four");
  }

  @Test
  void leaves_a_word_that_is_too_long_whole() {
    assertThat(Wrap.lines("a incomprehensible b", 5)).containsExactly("a", "incomprehensible", "b");
  }

  @Test
  void hangs_later_lines_below_the_first_word() {
    assertThat(Wrap.hanging("- ", "one two three", 9)).containsExactly("- one two", "  three");
  }

  @Test
  void keeps_a_number_and_its_per_cent_sign_together() {
    assertThat(Wrap.lines("keep 13 % free", 7)).containsExactly("keep", "13 %", "free");
  }
}
