package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.instance.Instance;

/**
 * The brief's times as whole minutes on a grid. What must be exact (breaks, meals, own items, pins)
 * decides the grid: five minutes, or the largest smaller one that fits all. What is a limit (the
 * cap, the stretch, the window of a meal) is rounded to the safe side.
 *
 * @param grid minutes in a cell
 * @param cap minutes
 * @param stretch shortest and longest
 * @param breakMinutes of an ordinary break
 * @param meals in order
 * @param pins wishes and own items that start at a minute
 */
record Timing(
    int grid,
    int cap,
    Instance.Stretch stretch,
    int breakMinutes,
    List<Instance.Meal> meals,
    List<Instance.Pin> pins) {

  /** A time that decides the grid: one minute, or a window in which some minute must do. */
  private record Fixed(String field, String text, int from, int to) {
    boolean fits(int grid) {
      return up(from, grid) <= to;
    }
  }

  /**
   * Puts the brief's times on a grid.
   *
   * @throws InvalidValueException if a time is no whole minute, or no grid fits them all
   */
  static Timing of(Brief brief) {
    List<Fixed> fixed = new ArrayList<>();
    List<Instance.Pin> pins = new ArrayList<>();
    fixed.add(exact("break", "", brief.rhythm().pause()));
    for (Meal meal : brief.meals()) {
      fixed.add(exact("meal", "", meal.length()));
      fixed.add(window(meal));
    }
    for (OwnItem item : brief.ownItems()) {
      fixed.add(exact("own-items", item.id() + " of ", item.length()));
      item.at().ifPresent(at -> pin("own-items", item.id(), at, brief, fixed, pins));
    }
    for (Wishes.Pin pin : brief.wishes().pins()) {
      pin("pin", pin.exercise(), pin.at(), brief, fixed, pins);
    }
    for (int grid = ExchangeRates.GRID; grid >= 1; grid--) {
      if (fits(grid, brief, fixed)) {
        return onGrid(grid, brief, pins);
      }
    }
    throw noGrid(fixed);
  }

  private static void pin(
      String field,
      String what,
      Moment at,
      Brief brief,
      List<Fixed> fixed,
      List<Instance.Pin> pins) {
    Fixed start = exact(field, what + " at ", brief.offset(at));
    fixed.add(start);
    pins.add(new Instance.Pin(what, start.from()));
  }

  private static Fixed exact(String field, String what, Duration time) {
    int minutes = minutes(time);
    if (!time.equals(Duration.ofMinutes(minutes))) {
      throw new InvalidValueException(
          field,
          what + minutes + " min " + time.toSecondsPart() + " s",
          "write whole minutes, such as " + minutes + " min");
    }
    return new Fixed(field, what + minutes + " min", minutes, minutes);
  }

  private static Fixed window(Meal meal) {
    int from = minutes(meal.earliest().plusSeconds(59));
    int to = minutes(meal.latest());
    return new Fixed("meal", from + " to " + to + " min after the start", from, to);
  }

  private static boolean fits(int grid, Brief brief, List<Fixed> fixed) {
    return minutes(brief.cap()) / grid <= Instance.MOST_CELLS
        && minutes(brief.rhythm().longest()) / grid <= Instance.MOST_BITS
        && fixed.stream().allMatch(time -> time.fits(grid));
  }

  private static InvalidValueException noGrid(List<Fixed> fixed) {
    Fixed odd = fixed.stream().filter(time -> !time.fits(ExchangeRates.GRID)).findFirst().get();
    return new InvalidValueException(
        odd.field(),
        odd.text(),
        "write a multiple of "
            + ExchangeRates.GRID
            + " minutes; a plan by the minute ends at a cap of "
            + Instance.MOST_CELLS
            + " and stretches of "
            + Instance.MOST_BITS
            + " minutes");
  }

  private static Timing onGrid(int grid, Brief brief, List<Instance.Pin> pins) {
    int cap = down(minutes(brief.cap()), grid);
    List<Instance.Meal> meals = new ArrayList<>();
    for (Meal meal : brief.meals()) {
      Fixed window = window(meal);
      meals.add(
          new Instance.Meal(
              up(window.from(), grid),
              Math.min(cap, down(window.to(), grid)),
              minutes(meal.length())));
    }
    return new Timing(
        grid,
        cap,
        new Instance.Stretch(
            down(minutes(brief.rhythm().shortest()), grid),
            down(minutes(brief.rhythm().longest()), grid)),
        minutes(brief.rhythm().pause()),
        List.copyOf(meals),
        List.copyOf(pins));
  }

  private static int minutes(Duration duration) {
    return (int) duration.toMinutes();
  }

  private static int up(int minutes, int grid) {
    return (minutes + grid - 1) / grid * grid;
  }

  private static int down(int minutes, int grid) {
    return minutes / grid * grid;
  }
}
