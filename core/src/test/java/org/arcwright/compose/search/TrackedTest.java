package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The exercises that a search keeps from coming twice. */
class TrackedTest {
  private static final int FIRST = 70;

  /** Seventy exercises for the first phase, and one for the second. */
  private final Tracked tracked =
      new Tracked(
          Models.of(
              Models.hour(Models.phase("first", 4), Models.phase("second", 4))
                  .candidates(
                      IntStream.rangeClosed(0, FIRST)
                          .mapToObj(
                              i -> Models.candidate("c" + i, i < FIRST ? "first" : "second", 0))
                          .toList())
                  .build()));

  @Test
  void each_has_a_bit_of_its_own_once_it_is_tracked() {
    assertThat(tracked.bit(5)).isZero();
    assertThat(tracked.add(5)).isTrue();
    assertThat(tracked.add(9)).isTrue();
    assertThat(tracked.add(5)).isTrue();
    assertThat(tracked.size()).isEqualTo(2);
    assertThat(List.of(tracked.bit(5), tracked.bit(9), tracked.bit(7))).containsExactly(1L, 2L, 0L);
    assertThat(tracked.candidate(0)).isEqualTo(5);
    assertThat(tracked.candidate(1)).isEqualTo(9);
  }

  /** Who used what no later phase can use loses nothing by it. */
  @Test
  void what_no_phase_ahead_can_use_is_forgotten() {
    tracked.add(5);
    tracked.add(FIRST);
    assertThat(tracked.ahead(0)).isEqualTo(0b11);
    assertThat(tracked.ahead(1)).isEqualTo(0b10);
  }

  @Test
  void there_is_room_for_sixty_four() {
    for (int i = 0; i < 64; i++) {
      assertThat(tracked.add(i)).isTrue();
    }
    assertThat(tracked.add(64)).isFalse();
    assertThat(tracked.add(63)).isTrue();
    assertThat(tracked.bit(64)).isZero();
    assertThat(tracked.size()).isEqualTo(64);
    assertThat(tracked.ahead(0)).isEqualTo(-1L);
    assertThat(tracked.ahead(1)).isZero();
  }
}
