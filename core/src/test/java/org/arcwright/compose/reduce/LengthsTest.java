package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.arcwright.catalog.Minutes;
import org.junit.jupiter.api.Test;

class LengthsTest {

  @Test
  void are_the_multiples_of_the_grid_within_the_range() {
    assertThat(of(10.5, 18, 30.5).minutes()).containsExactly(15, 20, 25, 30);
  }

  @Test
  void never_fall_short_of_the_least() {
    assertThat(of(10.25, 11, 14.75).minutes()).containsExactly(15);
  }

  @Test
  void are_the_next_above_when_no_multiple_lies_in_the_range() {
    assertThat(of(3, 3.75, 4.75).minutes()).containsExactly(5);
    assertThat(of(11, 12, 14).minutes()).containsExactly(15);
  }

  @Test
  void are_none_over_the_longest_stretch() {
    assertThat(Lengths.of(range(40, 60, 80), 5, 50).minutes()).containsExactly(40, 45, 50);
    assertThat(Lengths.of(range(51, 60, 80), 5, 50).minutes()).isEmpty();
    assertThat(Lengths.of(range(51, 60, 80), 5, 50).shortest()).isEqualTo(55);
  }

  @Test
  void cost_twice_as_much_below_the_usual_one_as_above() {
    Lengths lengths = of(10, 20, 30);

    assertThat(lengths.minutes()).containsExactly(10, 15, 20, 25, 30);
    assertThat(lengths.costs()).containsExactly(200, 100, 0, 50, 100);
  }

  @Test
  void do_not_make_a_typical_length_between_two_cells_costly() {
    assertThat(of(10, 17, 20).costs()).containsExactly(100, 0, 50);
    assertThat(of(10, 18, 20).costs()).containsExactly(200, 100, 0);
    assertThat(of(3, 3.75, 4.75).costs()).containsExactly(0);
  }

  @Test
  void cost_as_squeezed_when_the_multiple_nearest_to_the_typical_length_is_over_the_range() {
    assertThat(of(4.5, 8, 9).minutes()).containsExactly(5);
    assertThat(of(4.5, 8, 9).costs()).containsExactly(100);
  }

  @Test
  void cost_nothing_when_they_are_as_short_as_the_grid_allows() {
    assertThat(of(11, 12, 14).minutes()).containsExactly(15);
    assertThat(of(11, 12, 14).costs()).containsExactly(0);
  }

  @Test
  void take_the_longer_one_as_usual_when_two_are_as_near() {
    assertThat(of(10, 17.5, 25).costs()).containsExactly(200, 100, 0, 50);
  }

  @Test
  void remember_the_usual_one_when_it_is_over_the_longest_stretch() {
    assertThat(Lengths.of(range(40, 60, 80), 5, 50).costs()).containsExactly(400, 300, 200);
  }

  @Test
  void follow_a_finer_grid() {
    assertThat(Lengths.of(range(3, 3.75, 4.75), 1, 60).minutes()).containsExactly(3, 4);
    assertThat(Lengths.of(range(3, 3.75, 4.75), 1, 60).costs()).containsExactly(20, 0);
  }

  private static Lengths of(double min, double typical, double max) {
    return Lengths.of(range(min, typical, max), 5, 60);
  }

  private static Minutes range(double min, double typical, double max) {
    return new Minutes(time(min), time(typical), time(max));
  }

  private static Duration time(double minutes) {
    return Duration.ofSeconds((long) (60 * minutes));
  }
}
