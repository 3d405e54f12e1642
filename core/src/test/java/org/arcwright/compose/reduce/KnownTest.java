package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.arcwright.catalog.InvalidValueException;
import org.junit.jupiter.api.Test;

/** What a person reads who wrote a word that names nothing. */
class KnownTest {

  @Test
  void words_that_are_known_pass() {
    assertThatCode(() -> Known.check("tools", List.of("call", "wall"), known(), "tool"))
        .doesNotThrowAnyException();
    assertThatCode(() -> Known.check("tools", List.of(), known(), "tool"))
        .doesNotThrowAnyException();
  }

  @Test
  void the_first_unknown_word_is_named_with_the_nearest_known_one() {
    assertThatThrownBy(() -> Known.check("tools", List.of("call", "wal", "x"), known(), "tool"))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("tools is wal: there is no such tool; perhaps wall");
  }

  @Test
  void a_word_near_to_none_is_answered_with_all_if_these_are_a_dozen_at_most() {
    assertThatThrownBy(() -> Known.check("tools", List.of("beamer"), known(), "tool"))
        .hasMessage("tools is beamer: there is no such tool; known are call, wall");
    assertThatThrownBy(() -> Known.check("tools", List.of("beamer"), words(12), "tool"))
        .hasMessageEndingWith(
            "known are w10, w11, w12, w13, w14, w15, w16, w17, w18, w19, w20, w21");
    assertThatThrownBy(() -> Known.check("tools", List.of("beamer"), words(13), "tool"))
        .hasMessage("tools is beamer: there is no such tool; check its id");
  }

  private static Set<String> known() {
    return new TreeSet<>(Set.of("call", "wall"));
  }

  private static Set<String> words(int number) {
    return IntStream.range(10, 10 + number)
        .mapToObj(i -> "w" + i)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
