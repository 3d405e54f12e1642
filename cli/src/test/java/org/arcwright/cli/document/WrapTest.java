package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrapTest {
  @Test
  void breaksBetweenWords() {
    assertThat(Wrap.lines("one two three four", 9)).containsExactly("one two", "three", "four");
  }

  @Test
  void leavesAWordThatIsTooLongWhole() {
    assertThat(Wrap.lines("a incomprehensible b", 5)).containsExactly("a", "incomprehensible", "b");
  }

  @Test
  void hangsLaterLinesBelowTheFirstWord() {
    assertThat(Wrap.hanging("- ", "one two three", 9)).containsExactly("- one two", "  three");
  }

  @Test
  void keepsANumberAndItsPerCentSignTogether() {
    assertThat(Wrap.lines("keep 13 % free", 7)).containsExactly("keep", "13 %", "free");
  }
}
