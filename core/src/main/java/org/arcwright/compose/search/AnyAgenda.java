package org.arcwright.compose.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution.Status;
import org.jspecify.annotations.Nullable;

/**
 * Looks for any agenda of an instance, however dear: depth first, and from each state but once.
 * Without prices a way into a state is as good as each other one with no more behind it, so that
 * far fewer are looked at than where the cheapest is to be proven. That no exercise comes twice is
 * enforced only for those that a way found before has repeated (decremental state-space relaxation,
 * Righini and Salani 2008), so that "nothing fits" is exact, too.
 */
public final class AnyAgenda {
  /**
   * What was found.
   *
   * @param status {@link Status#FEASIBLE}, {@link Status#INFEASIBLE}, or {@link Status#STOPPED} if
   *     the limit came first, or if there are rules, which this does not read
   * @param items that fit
   * @param steps taken
   */
  public record Found(Status status, List<Item> items, long steps) {
    /** Copies the list. */
    public Found {
      items = List.copyOf(items);
    }
  }

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

  private final Model model;
  private final Finishable ahead;

  /** Each phase's moves, shortest first; of one length, by candidate. */
  private final Peers[][] moves;

  private final Limit limit;
  private final Deque<Label> open = new ArrayDeque<>();
  private final Map<Long, List<Label>> seen = new HashMap<>();
  private final Map<Integer, Long> tracked = new HashMap<>();
  private long steps;

  private AnyAgenda(Model model, Finishable ahead, Limit limit) {
    this.model = model;
    this.ahead = ahead;
    this.moves = Arrays.stream(model.stages).map(AnyAgenda::moves).toArray(Peers[][]::new);
    this.limit = limit;
  }

  /**
   * Looks for any agenda; prices are not looked at.
   *
   * @param limit asked in every part of the work
   */
  public static Found of(Instance instance, Limit limit) {
    if (!instance.rules().equals(Instance.Rules.NONE)) {
      return new Found(Status.STOPPED, List.of(), 0);
    }
    Work work = new Work(limit);
    try {
      Optional<Facts> facts = Facts.of(instance, work);
      Optional<Model> model = facts.flatMap(known -> ModelBuilder.build(known, work));
      if (model.isEmpty()) {
        return new Found(Status.INFEASIBLE, List.of(), 0);
      }
      return Finishable.of(model.get(), facts.get().possible)
          .map(ahead -> new AnyAgenda(model.get(), ahead, limit).find())
          .orElseGet(() -> new Found(Status.STOPPED, List.of(), 0));
    } catch (Work.Stopped stopped) {
      return new Found(Status.STOPPED, List.of(), work.done());
    }
  }

  private static Peers[] moves(Stage stage) {
    return Arrays.stream(stage.movePeers)
        .flatMap(Arrays::stream)
        .sorted(
            Comparator.comparingInt((Peers peers) -> peers.length)
                .thenComparingInt(peers -> peers.members[0]))
        .toArray(Peers[]::new);
  }

  private Found find() {
    while (true) {
      open.clear();
      seen.clear();
      Label last = round();
      if (last == null) {
        Status status = limit.reached(steps) ? Status.STOPPED : Status.INFEASIBLE;
        return new Found(status, List.of(), steps);
      }
      Set<Integer> repeated = repeated(last);
      if (repeated.isEmpty()) {
        return new Found(Status.FEASIBLE, items(last), steps);
      }
      for (int candidate : repeated) {
        if (tracked.size() == Long.SIZE) {
          return new Found(Status.STOPPED, List.of(), steps);
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
      Stage stage = model.stages[label.stage];
      rest(label);
      exercises(label, label.stage);
      if (complete(label, stage) && label.stage + 1 < model.stages.length) {
        exercises(label, label.stage + 1);
      }
    }
    return null;
  }

  private boolean ends(Label label) {
    return label.stage == model.stages.length - 1
        && complete(label, model.stages[label.stage])
        && label.stretch > 0
        && label.time > model.lastPin
        && label.meals == model.mealFrom.length
        && label.time + model.buffer(label.time - label.rested) <= model.cells;
  }

  private static boolean complete(Label label, Stage stage) {
    return stage.complete(label.count, label.cells) && (stage.due & ~label.products) == 0;
  }

  private void rest(Label label) {
    if (label.stretch == 0 || model.pinAt[label.time] >= 0) {
      return;
    }
    if (model.mealMayStart(label.meals, label.time)) {
      rest(label, model.mealCells[label.meals], label.meals + 1);
    }
    if (model.breakCells > 0) {
      rest(label, model.breakCells, label.meals);
    }
  }

  private void rest(Label label, int length, int meals) {
    if (model.free(label.time, label.time + length)) {
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
    Stage stage = model.stages[number];
    boolean begins = number != label.stage;
    int count = begins ? 0 : label.count;
    int cells = begins ? 0 : label.cells;
    if (!stage.allowsAfter(count)) {
      return;
    }
    for (int i = moves[number].length - 1; i >= 0; i--) {
      Peers move = moves[number][i];
      steps++;
      if (label.stretch + move.length <= model.longestStretch
          && cells + move.length <= stage.maxCells
          && (move.needs & ~label.products) == 0
          && model.mayStart(move, label.time)
          && model.free(label.time, label.time + move.length)) {
        candidates(label, number, count, cells, move);
      }
    }
  }

  /**
   * An exercise that is neither tracked nor used stands for all of its move; else each that is
   * tracked and not used is tried, and, as the last, one that is not tracked once more.
   */
  private void candidates(Label label, int number, int count, int cells, Peers move) {
    int again = REST;
    for (int candidate : move.members) {
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
    for (int candidate : move.members) {
      long bit = tracked.getOrDefault(candidate, 0L);
      if (bit != 0 && (label.visited & bit) == 0) {
        push(next(label, candidate, number, count, cells, move));
      }
    }
  }

  private Label next(Label label, int candidate, int number, int count, int cells, Peers move) {
    return new Label(
        label,
        candidate,
        move.length,
        number,
        count + 1,
        cells + move.length,
        label.time + move.length,
        label.stretch + move.length,
        label.meals,
        label.rested,
        (label.products | move.yields) & model.stages[number].relevant,
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
    Stage stage = model.stages[label.stage];
    long count = stage.counted ? label.count : Math.min(label.count, stage.fewest);
    long cells = stage.maxCells < model.cells ? label.cells : Math.min(label.cells, stage.minCells);
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
      int start = (at.time - at.length) * model.grid;
      int length = at.length * model.grid;
      items.add(
          0,
          at.candidate == REST
              ? new Item.Pause(start, length)
              : new Item.Activity(model.ids[at.candidate], at.stage, start, length));
    }
    return items;
  }
}
