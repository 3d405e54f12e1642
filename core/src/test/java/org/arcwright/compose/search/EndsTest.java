package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.oracle.Draft;
import org.junit.jupiter.api.Test;

/** What an end costs at each time, against every number of breaks that could lead there. */
class EndsTest {
  private static final int SHORTEST = 2;
  private static final int LONGEST = 5;
  private static final int BREAK = 1;
  private static final int MEAL = 3;
  private static final int CELLS = 24;
  private static final int BUFFER = 40;
  private static final int IDLE = 7;

  @Test
  void unbroken_is_one_stretch() {
    Model model = Models.of(day().build());
    for (int t = 0; t <= CELLS; t++) {
      assertThat(Ends.of(model, false)[t])
          .describedAs("%d", t)
          .isEqualTo(cheapest(model, t, 0, 0, 0));
    }
  }

  @Test
  void broken_is_the_cheapest_number_of_breaks_that_fits() {
    Model model = Models.of(day().build());
    for (int t = 0; t <= CELLS; t++) {
      assertThat(Ends.of(model, true)[t])
          .describedAs("%d", t)
          .isEqualTo(cheapest(model, t, 1, CELLS, 0));
    }
  }

  @Test
  void a_meal_is_a_break_that_there_is_anyway() {
    Model model = Models.of(day().meals(new Meal(40, 160, 10 * MEAL)).build());
    for (int t = 0; t <= CELLS; t++) {
      assertThat(Ends.of(model, true)[t])
          .describedAs("%d", t)
          .isEqualTo(cheapest(model, t, 0, CELLS, 1));
    }
  }

  @Test
  void without_ordinary_breaks_there_are_meals_at_most() {
    Model model = Models.of(day().breakMinutes(0).meals(new Meal(40, 160, 10 * MEAL)).build());
    for (int t = 0; t <= CELLS; t++) {
      assertThat(Ends.of(model, true)[t])
          .describedAs("%d", t)
          .isEqualTo(cheapest(model, t, 0, 0, 1));
    }
  }

  @Test
  void nothing_ends_before_the_last_pinned_exercise() {
    Model model = Models.of(day().pins(new Pin("short", 90)).build());
    for (int t = 0; t <= CELLS; t++) {
      assertThat(Ends.of(model, true)[t])
          .describedAs("%d", t)
          .isEqualTo(t <= 9 ? Model.INFINITE : cheapest(model, t, 1, CELLS, 0));
    }
  }

  /** Four hours on a grid of ten minutes. */
  private static Draft day() {
    return new Draft(10, 10 * CELLS)
        .stretch(0, 10 * LONGEST)
        .breakMinutes(10 * BREAK)
        .bufferPercent(BUFFER)
        .phases(
            List.of(
                new Phase(
                    "any", Set.of("any"), new Bounds(1, 12), new Bounds(0, 240), 0, List.of())))
        .candidates(
            List.of(
                Models.candidate("short", "any", 0, 10 * SHORTEST),
                Models.candidate("long", "any", 0, 10 * LONGEST)))
        .weights(new Weights(0, 0, 0, 0, 0, 0, IDLE));
  }

  private static long cheapest(Model model, int t, int fewest, int most, int meals) {
    long least = Model.INFINITE;
    for (int breaks = fewest; breaks <= most; breaks++) {
      int exercise = t - breaks * BREAK - meals * MEAL;
      int end = t + (exercise * BUFFER + 99) / 100;
      if (splits(exercise, breaks + meals + 1) && end <= CELLS) {
        long idle = model.pack((long) (CELLS - end) * 10 * IDLE);
        least = Math.min(least, idle + breaks * model.toll);
      }
    }
    return least;
  }

  /** Whether cells can be cut into so many stretches, none too short or too long. */
  private static boolean splits(int cells, int stretches) {
    if (stretches == 0) {
      return cells == 0;
    }
    for (int first = SHORTEST; first <= Math.min(LONGEST, cells); first++) {
      if (splits(cells - first, stretches - 1)) {
        return true;
      }
    }
    return false;
  }

  /** A break more makes the buffer shorter by its part of the break, which is idle instead. */
  @Test
  void the_toll_is_what_a_breaks_shorter_buffer_leaves_idle() {
    Model model = Models.of(day().build());
    assertThat(model.cost(model.toll)).isEqualTo(10L * BREAK * BUFFER * IDLE / 100);
  }
}
