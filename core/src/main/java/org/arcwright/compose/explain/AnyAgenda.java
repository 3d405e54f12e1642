package org.arcwright.compose.explain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.explain.Day.Move;
import org.arcwright.compose.explain.Day.Stage;
import org.arcwright.compose.explain.Feasibility.Status;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.jspecify.annotations.Nullable;

/**
 * Looks for any agenda of an instance, however dear: depth first, and from each state but once.
 * Without prices a way into a state is as good as each other one with no more behind it, so that
 * far fewer are looked at than where the cheapest is to be proven. That no exercise comes twice is
 * enforced only for those that a way found before has repeated (decremental state-space relaxation,
 * Righini and Salani 2008), so that "nothing fits" is exact, too.
 */
final class AnyAgenda {
  /**
   * What was found.
   *
   * @param status {@link Status#UNKNOWN} if the limit came first, or if there are rules, which this
   *     does not read
   * @param items that fit
   * @param steps taken
   */
  record Found(Status status, List<Item> items, long steps) {}

  /**
   * A way so far: where it stands, and what it has behind it.
   *
   * @param candidate the last exercise's number, or {@link #REST}
   * @param cells of the phase
   * @param rested cells of breaks and meals
   * @param visited the tracked exercises that it has used, as bits
   */
  private record Label(
      @Nullable Label parent,
      int candidate,
      int length,
      int stage,
      int count,
      int cells,
      int time,
      int stretch,
      int meals,
      int rested,
      long products,
      long visited) {

    boolean uses(int exercise) {
      for (Label at = this; at != null; at = at.parent) {
        if (at.candidate == exercise) {
          return true;
        }
      }
      return false;
    }

    /** Whether all that may follow the other, in the same state, may follow this. */
    boolean asGoodAs(Label other) {
      return stretch <= other.stretch
          && rested >= other.rested
          && (other.products & ~products) == 0
          && (visited & ~other.visited) == 0;
    }
  }

  private static final int REST = -1;

  private final Day day;
  private final Ahead ahead;
  private final Limit limit;
  private final Deque<Label> open = new ArrayDeque<>();
  private final Map<Long, List<Label>> seen = new HashMap<>();
  private final Map<Integer, Long> tracked = new HashMap<>();
  private long steps;

  private AnyAgenda(Day day, Ahead ahead, Limit limit) {
    this.day = day;
    this.ahead = ahead;
    this.limit = limit;
  }

  static Found of(Instance instance, Limit limit) {
    if (!instance.rules().equals(Instance.Rules.NONE)) {
      return new Found(Status.UNKNOWN, List.of(), 0);
    }
    Optional<Day> day = Day.of(instance);
    if (day.isEmpty()) {
      return new Found(Status.FITS_NOT, List.of(), 0);
    }
    return Ahead.of(day.get())
        .map(ahead -> new AnyAgenda(day.get(), ahead, limit).find())
        .orElseGet(() -> new Found(Status.UNKNOWN, List.of(), 0));
  }

  private Found find() {
    while (true) {
      open.clear();
      seen.clear();
      Label last = round();
      if (last == null) {
        Status status = limit.reached(steps) ? Status.UNKNOWN : Status.FITS_NOT;
        return new Found(status, List.of(), steps);
      }
      Set<Integer> repeated = repeated(last);
      if (repeated.isEmpty()) {
        return new Found(Status.FITS, items(last), steps);
      }
      for (int candidate : repeated) {
        if (tracked.size() == Long.SIZE) {
          return new Found(Status.UNKNOWN, List.of(), steps);
        }
        tracked.putIfAbsent(candidate, 1L << tracked.size());
      }
    }
  }

  /** The first way to the end, or none; or none in time. */
  private @Nullable Label round() {
    exercises(new Label(null, REST, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), 0);
    while (!open.isEmpty()) {
      Label label = open.pop();
      if (ends(label)) {
        return label;
      }
      if (limit.reached(steps)) {
        return null;
      }
      Stage stage = day.stages.get(label.stage);
      rest(label);
      exercises(label, label.stage);
      if (complete(label, stage) && label.stage + 1 < day.stages.size()) {
        exercises(label, label.stage + 1);
      }
    }
    return null;
  }

  private boolean ends(Label label) {
    return label.stage == day.stages.size() - 1
        && complete(label, day.stages.get(label.stage))
        && label.stretch > 0
        && label.time > day.lastPin
        && label.meals == day.mealFrom.length
        && label.time + day.buffer(label.time - label.rested) <= day.cells;
  }

  private static boolean complete(Label label, Stage stage) {
    return label.count >= stage.fewest()
        && label.cells >= stage.least()
        && (stage.due() & ~label.products) == 0;
  }

  private void rest(Label label) {
    if (label.stretch == 0 || day.pinAt[label.time] >= 0) {
      return;
    }
    int meal = label.meals;
    if (meal < day.mealFrom.length
        && day.mealFrom[meal] <= label.time
        && label.time <= day.mealTo[meal]) {
      rest(label, day.mealCells[meal], meal + 1);
    }
    if (day.pause > 0) {
      rest(label, day.pause, meal);
    }
  }

  private void rest(Label label, int length, int meals) {
    if (day.free(label.time, label.time + length)) {
      push(
          new Label(
              label,
              REST,
              length,
              label.stage,
              label.count,
              label.cells,
              label.time + length,
              0,
              meals,
              label.rested + length,
              label.products,
              label.visited));
    }
  }

  /** Goes on with exercises of the same phase or the next; the shortest are tried first. */
  private void exercises(Label label, int number) {
    Stage stage = day.stages.get(number);
    boolean begins = number != label.stage;
    int count = begins ? 0 : label.count;
    int cells = begins ? 0 : label.cells;
    if (count == stage.most()) {
      return;
    }
    for (int i = stage.moves().size() - 1; i >= 0; i--) {
      Move move = stage.moves().get(i);
      steps++;
      if (label.stretch + move.cells() <= day.stretch
          && cells + move.cells() <= stage.longest()
          && (move.needs() & ~label.products) == 0
          && (move.pinned()
              ? day.pinAt[label.time] == move.candidates().get(0)
              : day.pinAt[label.time] < 0)
          && day.free(label.time, label.time + move.cells())) {
        candidates(label, number, count, cells, move);
      }
    }
  }

  /**
   * An exercise that is neither tracked nor used stands for all of its move; else each that is
   * tracked and not used is tried, and, as the last, one that is not tracked once more.
   */
  private void candidates(Label label, int number, int count, int cells, Move move) {
    int again = REST;
    for (int candidate : move.candidates()) {
      if (!tracked.containsKey(candidate)) {
        if (!label.uses(candidate)) {
          push(next(label, candidate, number, count, cells, move));
          return;
        }
        again = candidate;
      }
    }
    if (again != REST) {
      push(next(label, again, number, count, cells, move));
    }
    for (int candidate : move.candidates()) {
      long bit = tracked.getOrDefault(candidate, 0L);
      if (bit != 0 && (label.visited & bit) == 0) {
        push(next(label, candidate, number, count, cells, move));
      }
    }
  }

  private Label next(Label label, int candidate, int number, int count, int cells, Move move) {
    return new Label(
        label,
        candidate,
        move.cells(),
        number,
        count + 1,
        cells + move.cells(),
        label.time + move.cells(),
        label.stretch + move.cells(),
        label.meals,
        label.rested,
        (label.products | move.yields()) & day.stages.get(number).relevant(),
        label.visited | tracked.getOrDefault(candidate, 0L));
  }

  private void push(Label label) {
    if (!ahead.open(
        label.stage,
        label.count,
        label.cells,
        label.time,
        label.stretch,
        label.meals,
        label.rested,
        label.products)) {
      return;
    }
    List<Label> alike = seen.computeIfAbsent(state(label), any -> new ArrayList<>(2));
    for (Label other : alike) {
      if (other.asGoodAs(label)) {
        return;
      }
    }
    alike.removeIf(label::asGoodAs);
    alike.add(label);
    open.push(label);
  }

  /**
   * What must be the same for one way to be as good as another; counts that bind nobody are not.
   */
  private long state(Label label) {
    Stage stage = day.stages.get(label.stage);
    long count = stage.counted() ? label.count : Math.min(label.count, stage.fewest());
    long cells = stage.timed() ? label.cells : Math.min(label.cells, stage.least());
    long state = label.stage;
    state = state << 9 | count;
    state = state << 9 | cells;
    state = state << 9 | label.time;
    state = state << 9 | label.meals;
    return state << 1 | (label.stretch == 0 ? 1 : 0);
  }

  private static Set<Integer> repeated(Label last) {
    Set<Integer> used = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    for (Label at = last; at != null; at = at.parent) {
      if (at.candidate != REST && !used.add(at.candidate)) {
        repeated.add(at.candidate);
      }
    }
    return repeated;
  }

  private List<Item> items(Label last) {
    List<Item> items = new ArrayList<>();
    for (Label at = last; at.parent != null; at = at.parent) {
      int start = (at.time - at.length) * day.grid;
      int length = at.length * day.grid;
      items.add(
          0,
          at.candidate == REST
              ? new Item.Pause(start, length)
              : new Item.Activity(day.id(at.candidate), at.stage, start, length));
    }
    return items;
  }
}
