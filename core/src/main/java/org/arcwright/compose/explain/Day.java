package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Pin;

/** An instance in cells and bits, without prices: what {@link AnyAgenda} goes through. */
final class Day {
  final int grid;
  final int cells;
  final int stretch;
  final int pause;
  final int[] mealFrom;
  final int[] mealTo;
  final int[] mealCells;

  /** The candidate that must start at a cell, or -1. */
  final int[] pinAt;

  /** The next cell after this one at which something must start; a large one if there is none. */
  final int[] nextPin;

  final List<Stage> stages = new ArrayList<>();

  /** For each phase, what may exist by its end, as bits. */
  long[] possible = {};

  int lastPin = -1;

  private final Instance instance;
  private final List<Candidate> candidates;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<String, Long> bits = new HashMap<>();
  private final int[] pinOf;
  private final long[] needs;
  private final long[] yields;
  private final long[] due;

  /**
   * Candidates that a phase can use in the same way for so many cells.
   *
   * @param needs what must exist, as bits
   * @param yields what exists after it
   * @param pinned whether it is one candidate that starts at its pin and nowhere else
   * @param candidates their numbers
   */
  record Move(int cells, long needs, long yields, boolean pinned, List<Integer> candidates) {}

  /**
   * A phase.
   *
   * @param most exercises; no more than fit into its cells
   * @param counted whether that is fewer than fit
   * @param timed whether its most cells are fewer than the day has
   * @param due what must exist at its end
   * @param relevant what this or a later phase asks for
   */
  record Stage(
      int fewest,
      int most,
      boolean counted,
      int least,
      int longest,
      boolean timed,
      long due,
      long relevant,
      List<Move> moves) {
    int shortestMove() {
      return moves.stream().mapToInt(Move::cells).min().orElse(0);
    }
  }

  private Day(Instance instance) {
    this.instance = instance;
    this.candidates = instance.candidates();
    this.grid = instance.grid();
    this.cells = instance.cells();
    this.stretch = instance.stretch().max() / grid;
    this.pause = instance.breakMinutes() / grid;
    List<Meal> meals = instance.meals();
    this.mealFrom = meals.stream().mapToInt(meal -> meal.from() / grid).toArray();
    this.mealTo = meals.stream().mapToInt(meal -> meal.to() / grid).toArray();
    this.mealCells = meals.stream().mapToInt(meal -> meal.minutes() / grid).toArray();
    this.pinAt = new int[cells + 1];
    this.nextPin = new int[cells + 1];
    this.pinOf = new int[candidates.size()];
    this.needs = new long[candidates.size()];
    this.yields = new long[candidates.size()];
    this.due = new long[instance.phases().size()];
    for (int i = 0; i < candidates.size(); i++) {
      numbers.put(candidates.get(i).id(), i);
    }
  }

  /** The day, or nothing if it is plain already that nothing fits. */
  static Optional<Day> of(Instance instance) {
    Day day = new Day(instance);
    return day.readPins() && day.readPhases() ? Optional.of(day) : Optional.empty();
  }

  String id(int candidate) {
    return candidates.get(candidate).id();
  }

  /** Closing buffer in cells after so many of exercises. */
  int buffer(int exercised) {
    return instance.buffer(exercised * grid) / grid;
  }

  /** Whether something may last from one cell to another without running over a pinned start. */
  boolean free(int start, int end) {
    return end <= cells && end <= nextPin[start];
  }

  private boolean readPins() {
    Arrays.fill(pinAt, -1);
    Arrays.fill(pinOf, -1);
    for (Pin pin : instance.pins()) {
      Integer number = numbers.get(pin.id());
      int at = pin.at() / grid;
      if (number == null
          || at >= cells
          || (pinOf[number] >= 0 && pinOf[number] != at)
          || (pinAt[at] >= 0 && pinAt[at] != number)) {
        return false;
      }
      pinAt[at] = number;
      pinOf[number] = at;
      lastPin = Math.max(lastPin, at);
    }
    int next = Integer.MAX_VALUE;
    for (int t = cells; t >= 0; t--) {
      nextPin[t] = next;
      next = pinAt[t] >= 0 ? t : next;
    }
    return true;
  }

  private boolean readPhases() {
    instance.products().forEach(product -> bits.put(product, 1L << bits.size()));
    long initial = mask(instance.initial());
    for (int i = 0; i < candidates.size(); i++) {
      needs[i] = mask(candidates.get(i).needs()) & ~initial;
      yields[i] = mask(candidates.get(i).yields()) & ~initial;
    }
    for (int p = 0; p < due.length; p++) {
      due[p] = mask(instance.phases().get(p).yields()) & ~initial;
    }
    possible = possible();
    if (!placeWishes()) {
      return false;
    }
    possible = possible();
    long relevant = 0;
    for (int p = due.length - 1; p >= 0; p--) {
      if ((due[p] & ~possible[p]) != 0) {
        return false;
      }
      relevant |= due[p];
      for (int i = 0; i < candidates.size(); i++) {
        relevant |= usable(i, p) ? needs[i] : 0;
      }
      Stage stage = stage(p, relevant);
      stages.add(0, stage);
      if (stage.fewest() > stage.most()
          || stage.least() > stage.longest()
          || stage.fewest() * stage.shortestMove() > stage.longest()) {
        return false;
      }
    }
    return true;
  }

  private long mask(List<String> names) {
    return names.stream().mapToLong(name -> bits.getOrDefault(name, 0L)).reduce(0, (a, b) -> a | b);
  }

  private boolean usable(int candidate, int phase) {
    return instance.phases().get(phase).kinds().contains(candidates.get(candidate).kind())
        && (needs[candidate] & ~possible[phase]) == 0;
  }

  private long[] possible() {
    possible = new long[due.length];
    for (int p = 0; p < possible.length; p++) {
      possible[p] = p == 0 ? 0 : possible[p - 1];
      long before;
      do {
        before = possible[p];
        for (int i = 0; i < candidates.size(); i++) {
          possible[p] |= usable(i, p) ? yields[i] : 0;
        }
      } while (possible[p] != before);
    }
    return possible;
  }

  /** Turns each wish that is not pinned into a product that its candidate alone yields. */
  private boolean placeWishes() {
    for (String id : instance.include()) {
      Integer number = numbers.get(id);
      if (number == null) {
        return false;
      }
      if (pinOf[number] < 0 && !bits.containsKey(" " + id)) {
        int last = due.length - 1;
        while (last >= 0 && !usable(number, last)) {
          last--;
        }
        if (last < 0) {
          return false;
        }
        long bit = 1L << bits.size();
        bits.put(" " + id, bit);
        yields[number] |= bit;
        due[last] |= bit;
      }
    }
    return true;
  }

  private record Use(int cells, long needs, long yields, int pinned) {}

  private Stage stage(int p, long relevant) {
    Instance.Phase phase = instance.phases().get(p);
    int longest = Math.min(phase.minutes().max() / grid, cells);
    NavigableMap<Integer, Map<Use, List<Integer>>> uses = new TreeMap<>();
    for (int i = 0; i < candidates.size(); i++) {
      if (usable(i, p)) {
        for (int minutes : candidates.get(i).lengths()) {
          int length = minutes / grid;
          if (length <= longest) {
            Use use = new Use(length, needs[i], yields[i] & relevant, pinOf[i] < 0 ? -1 : i);
            uses.computeIfAbsent(length, any -> new LinkedHashMap<>())
                .computeIfAbsent(use, any -> new ArrayList<>())
                .add(i);
          }
        }
      }
    }
    List<Move> moves = new ArrayList<>();
    for (Map<Use, List<Integer>> ofLength : uses.values()) {
      ofLength.forEach(
          (use, numbers) ->
              moves.add(
                  new Move(
                      use.cells(),
                      use.needs(),
                      use.yields(),
                      use.pinned() >= 0,
                      List.copyOf(numbers))));
    }
    int fit = moves.isEmpty() ? 0 : longest / moves.get(0).cells();
    return new Stage(
        phase.count().min(),
        Math.min(phase.count().max(), fit),
        phase.count().max() < fit,
        (phase.minutes().min() + grid - 1) / grid,
        longest,
        longest < cells,
        due[p],
        relevant,
        moves);
  }
}
