package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkingTimeTest {

  /** Remote: stretches up to 60, breaks of 10, buffer 15 %. Computed by hand. */
  @ParameterizedTest
  @CsvSource({
    "60, 52", // 60 / 1.15, within 54
    "63, 54", // 63 / 1.15 fill the 54 to the minute
    "90, 69", // without a break 78, over 54; with one 80 / 1.15
    "120, 95", // one break
    "180, 139", // two
    "240, 182", // three
    "480, 365", // six
  })
  void is_the_cap_without_breaks_and_buffer(int cap, int working) {
    assertThat(WorkingTime.minutes(timing(cap, 60, 10), 15)).isEqualTo(working);
  }

  /**
   * Source: The Carpentries, instructor training (CC BY 4.0), day 1: 470 minutes with lunch of 60
   * and two breaks of 15 leave 380 minutes of exercises, in runs of 90, 110, 100 and 80 minutes.
   * Two of these break the rule of a break about every 90 minutes (KACEE, "Building your agenda"),
   * so by that rule three breaks are expected, and 15 minutes less.
   */
  @Test
  void expects_one_break_more_than_a_published_agenda_that_breaks_the_rule() {
    assertThat(IntStream.of(90, 110, 100, 80).sum() + 60 + 2 * 15).isEqualTo(470);

    assertThat(WorkingTime.minutes(timing(470, 90, 15, 60), 0)).isEqualTo(470 - 60 - 3 * 15);
  }

  /** The same agenda with stretches of two hours: its own two breaks are enough. */
  @Test
  void agrees_with_the_published_agenda_once_its_longest_run_is_allowed() {
    assertThat(WorkingTime.minutes(timing(470, 120, 15, 60), 0)).isEqualTo(380);
  }

  @Test
  void ends_with_the_stretches_when_there_are_no_breaks() {
    assertThat(WorkingTime.minutes(timing(180, 60, 0), 0)).isEqualTo(54);
    assertThat(WorkingTime.minutes(timing(180, 60, 0, 45), 0)).isEqualTo(108);
  }

  @Test
  void is_nothing_when_meals_take_all_of_it() {
    assertThat(WorkingTime.minutes(timing(60, 60, 10, 90), 15)).isZero();
  }

  private static Timing timing(int cap, int longest, int pause, int... meals) {
    return new Timing(
        5,
        cap,
        new Instance.Stretch(30, longest),
        pause,
        IntStream.of(meals).mapToObj(minutes -> new Instance.Meal(0, cap, minutes)).toList(),
        List.of());
  }
}
