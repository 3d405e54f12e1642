package org.arcwright.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.arcwright.catalog.InvalidValueException;
import org.junit.jupiter.api.Test;

class ShrinkageTest {
  /** The textbook's formula worked by hand: precisions 1/36 and 4/64. */
  @Test
  void a_prior_of_thirty_and_four_observations_around_forty() {
    Shrinkage posterior = Shrinkage.of(30, 6, 4, 40, 8);

    assertThat(posterior.priorWeight()).isCloseTo(0.3077, within(5e-5));
    assertThat(posterior.mean()).isCloseTo(36.923, within(5e-4));
    assertThat(posterior.sd()).isCloseTo(3.328, within(5e-4));
  }

  @Test
  void nothing_observed_leaves_what_was_believed() {
    assertThat(Shrinkage.of(30, 6, 0, 99, 8)).isEqualTo(new Shrinkage(30, 6, 1));
  }

  @Property(tries = 300, seed = "635")
  void lies_between_the_two_and_is_surer_than_either(
      @ForAll @DoubleRange(min = -5, max = 5) double prior,
      @ForAll @DoubleRange(min = 0.1, max = 5) double priorSd,
      @ForAll @IntRange(min = 1, max = 50) int count,
      @ForAll @DoubleRange(min = -5, max = 5) double observed,
      @ForAll @DoubleRange(min = 0.1, max = 5) double sd) {
    Shrinkage posterior = Shrinkage.of(prior, priorSd, count, observed, sd);

    assertThat(posterior.mean())
        .isBetween(Math.min(prior, observed) - 1e-9, Math.max(prior, observed) + 1e-9);
    assertThat(posterior.sd()).isLessThan(Math.min(priorSd, sd / Math.sqrt(count)) + 1e-12);
  }

  @Test
  void refuses_a_spread_that_is_none() {
    assertThatThrownBy(() -> Shrinkage.of(0, 0, 1, 1, 1))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("priorSd");
  }
}
