package org.arcwright.vote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Exact numbers. */
class FractionTest {
  @Test
  void a_fraction_is_kept_in_lowest_terms() {
    assertThat(new Fraction(6, 4)).isEqualTo(new Fraction(3, 2)).hasToString("3/2");
    assertThat(new Fraction(-6, 3)).isEqualTo(Fraction.of(-2)).hasToString("-2");
    assertThat(new Fraction(0, 7)).isEqualTo(Fraction.ZERO);
    assertThat(new Fraction(Long.MIN_VALUE, 2)).isEqualTo(Fraction.of(Long.MIN_VALUE / 2));
  }

  @Test
  void sums_and_differences_are_exact() {
    assertThat(new Fraction(1, 3).plus(new Fraction(1, 6))).isEqualTo(new Fraction(1, 2));
    assertThat(new Fraction(1, 3).minus(new Fraction(1, 2))).isEqualTo(new Fraction(-1, 6));
    assertThat(new Fraction(-1, 6).abs()).isEqualTo(new Fraction(1, 6));
  }

  @Test
  void neighbours_beyond_the_range_of_a_product_are_told_apart() {
    Fraction below = new Fraction(Long.MAX_VALUE - 2, Long.MAX_VALUE - 1);
    Fraction above = new Fraction(Long.MAX_VALUE - 1, Long.MAX_VALUE);

    assertThat(below).isLessThan(above);
    assertThat(above).isGreaterThan(below).isEqualByComparingTo(above);
  }

  @Test
  void a_digit_is_never_lost() {
    Fraction vast = Fraction.of(Long.MAX_VALUE);
    assertThatThrownBy(() -> vast.plus(vast)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> new Fraction(1, 0))
        .hasMessage("denominator is 0: it has to be over 0");
  }
}
