package org.arcwright.compose.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.search.Limit;
import org.junit.jupiter.api.Test;

/** What is left of a budget that many searches share. */
class EffortTest {
  private Instant now = Instant.EPOCH;
  private final InstantSource clock = () -> now;

  @Test
  void is_spent_with_the_last_label() {
    Effort effort = effort(100, 60);

    effort.add(99);
    assertThat(effort.spent()).isFalse();
    effort.add(1);
    assertThat(effort.spent()).isTrue();
  }

  @Test
  void is_spent_when_the_time_is_over() {
    Effort effort = effort(100, 60);

    later(59);
    assertThat(effort.spent()).isFalse();
    later(1);
    assertThat(effort.spent()).isTrue();
    later(100);
    assertThat(effort.spent()).isTrue();
  }

  @Test
  void is_spent_when_somebody_cancels_or_interrupts() {
    boolean[] cancelled = new boolean[1];
    Effort effort = Effort.of(new Budget(100, Duration.ofMinutes(1)), () -> cancelled[0], clock);
    Limit limit = effort.limit(1);

    assertThat(effort.spent()).isFalse();
    assertThat(limit.reached(0)).isFalse();
    Thread.currentThread().interrupt();
    assertThat(effort.spent()).isTrue();
    assertThat(limit.reached(0)).isTrue();
    assertThat(Thread.interrupted()).as("still, so that the caller knows, too").isTrue();
    cancelled[0] = true;
    assertThat(effort.spent()).isTrue();
    assertThat(limit.reached(0)).isTrue();
  }

  @Test
  void is_shared_out_in_equal_parts_of_what_is_left() {
    Effort effort = effort(100, 60);
    effort.add(20);
    later(12);

    assertThat(effort.part(4)).isEqualTo(new Budget(20, Duration.ofSeconds(12)));
  }

  @Test
  void leaves_a_little_to_each_part_even_when_nothing_is_left() {
    Effort effort = effort(100, 60);
    effort.add(120);
    later(70);

    assertThat(effort.part(2)).isEqualTo(new Budget(1, Duration.ofNanos(1)));
  }

  @Test
  void of_so_many_per_cent_is_a_share_of_what_is_left_and_is_taken_from_the_whole() {
    Effort whole = effort(1000, 60);
    whole.add(200);
    later(20);
    Effort part = whole.percent(25);

    part.add(199);
    later(9);
    assertThat(part.spent()).isFalse();
    part.add(1);
    assertThat(part.spent()).isTrue();
    assertThat(whole.part(1)).isEqualTo(new Budget(600, Duration.ofSeconds(31)));
  }

  @Test
  void of_so_many_per_cent_ends_with_its_time() {
    Effort part = effort(1000, 60).percent(25);

    later(14);
    assertThat(part.spent()).isFalse();
    later(1);
    assertThat(part.spent()).isTrue();
  }

  @Test
  void limits_a_search_to_its_part_of_labels_and_time() {
    Effort effort = effort(100, 60);
    later(20);
    Limit limit = effort.limit(4);

    assertThat(limit.reached(24)).isFalse();
    assertThat(limit.reached(25)).isTrue();
    later(10);
    assertThat(limit.reached(0)).isFalse();
    later(1);
    assertThat(limit.reached(0)).isTrue();
  }

  private Effort effort(long labels, int seconds) {
    return Effort.of(new Budget(labels, Duration.ofSeconds(seconds)), Cancel.NEVER, clock);
  }

  private void later(int seconds) {
    now = now.plusSeconds(seconds);
  }
}
