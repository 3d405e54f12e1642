package org.arcwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.arcwright.catalog.InvalidValueException;
import org.junit.jupiter.api.Test;

class DistributionTest {
  private static final Distribution COIN = Distribution.of(0, 1, 1);

  @Test
  void two_dice_make_seven_with_one_in_six() {
    Distribution die = Distribution.of(1, 1, 1, 1, 1, 1, 1);
    Distribution both = die.plus(die);

    assertThat(both.chanceWithin(7, 7)).isCloseTo(1 / 6.0, within(1e-15));
    assertThat(both.chanceUpTo(3)).isCloseTo(3 / 36.0, within(1e-15));
    assertThat(both.mean()).isCloseTo(7, within(1e-12));
    assertThat(both.standardDeviation()).isCloseTo(Math.sqrt(35 / 6.0), within(1e-12));
    assertThat(both.percentile(50)).isEqualTo(7);
  }

  @Test
  void a_percentile_is_the_first_minute_that_suffices() {
    assertThat(COIN.percentile(50)).isZero();
    assertThat(COIN.percentile(51)).isEqualTo(1);
    assertThat(Distribution.at(7).percentile(1)).isEqualTo(7);
    assertThatThrownBy(() -> COIN.percentile(100)).hasMessageContaining("1 to 99 is right");
  }

  @Test
  void what_comes_early_waits() {
    Distribution wide = Distribution.of(10, 1, 1, 1, 1);

    assertThat(wide.notBefore(12).chanceWithin(12, 12)).isCloseTo(0.75, within(1e-15));
    assertThat(wide.notBefore(12).chanceUpTo(11)).isZero();
    assertThat(wide.notBefore(5)).isSameAs(wide);
    assertThat(wide.notBefore(30).percentile(50)).isEqualTo(30);
    assertThat(wide.notBefore(30).mean()).isCloseTo(30, within(1e-12));
  }

  @Test
  void what_has_lasted_so_long_can_only_last_longer() {
    Distribution wide = Distribution.of(10, 1, 1, 1, 1);

    assertThat(wide.given(12).chanceWithin(12, 12)).isCloseTo(0.5, within(1e-15));
    assertThat(wide.given(3)).isSameAs(wide);
    assertThat(wide.given(40).percentile(50)).isEqualTo(40);
  }

  @Test
  void no_chance_is_negative_and_some_chance_there_must_be() {
    assertThatThrownBy(() -> Distribution.of(0, 1, -1)).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> Distribution.of(0, Double.NaN))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> Distribution.of(0, Double.POSITIVE_INFINITY))
        .isInstanceOf(InvalidValueException.class);
    assertThat(Distribution.of(0, 1, 0, 1).chanceWithin(1, 1)).isZero();
    assertThatThrownBy(() -> Distribution.of(0, 0, 0)).isInstanceOf(InvalidValueException.class);
  }

  /** Against listing every case: with whole weights each pair of minutes counts so often. */
  @Property(tries = 200, seed = "1959")
  void sums_are_exact(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 9) Integer> one,
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 9) Integer> other,
      @ForAll @IntRange(min = -5, max = 14) int minute) {
    List<Integer> sums = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      for (int j = 0; j < other.size(); j++) {
        for (int times = 0; times < one.get(i) * other.get(j); times++) {
          sums.add(i - 5 + j);
        }
      }
    }
    Distribution sum = of(-5, one).plus(of(0, other));

    long upTo = sums.stream().filter(s -> s <= minute).count();
    assertThat(sum.chanceUpTo(minute)).isCloseTo((double) upTo / sums.size(), within(1e-12));
    double later = sums.stream().mapToInt(s -> Math.max(s, minute)).average().orElseThrow();
    assertThat(sum.notBefore(minute).mean()).isCloseTo(later, within(1e-10));
  }

  private static Distribution of(int from, List<Integer> weights) {
    return Distribution.of(from, weights.stream().mapToDouble(Integer::doubleValue).toArray());
  }
}
