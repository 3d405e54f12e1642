package org.arcwright.compose.oracle;

import static com.google.ortools.sat.LinearExpr.constant;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;

/**
 * The composition problem over time cells: one 0-1 variable for each way to place an exercise
 * (phase, start and length) and each break (ordinary or a certain meal). Each cell up to the end is
 * covered once. All times in here are cells.
 */
final class CpSatModel {
  /** An exercise placed. */
  private record Use(BoolVar taken, Candidate candidate, int phase, int start, int length) {
    int end() {
      return start + length;
    }

    boolean covers(int cell) {
      return start <= cell && cell < end();
    }
  }

  /** A break placed; the meal is its number or {@link #ORDINARY}. */
  private record Rest(BoolVar taken, int meal, int start, int length) {
    int end() {
      return start + length;
    }

    boolean covers(int cell) {
      return start <= cell && cell < end();
    }
  }

  private static final int ORDINARY = -1;

  private final CpModel model = new CpModel();
  private final Instance instance;
  private final int cells;
  private final List<Use> uses = new ArrayList<>();
  private final List<Rest> rests = new ArrayList<>();
  private final List<BoolVar> covered = new ArrayList<>();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();

  CpSatModel(Instance instance) {
    this.instance = instance;
    this.cells = instance.cells();
    placeExercises();
    placeBreaks();
    order();
    exercises();
    phases();
    products();
    stretches();
    meals();
    capAndIdle();
    wishes();
    neighbours();
    counts();
    monotony();
    rhythm();
  }

  CpModel model() {
    return model;
  }

  void minimizeCost() {
    model.minimize(cost.build());
  }

  /** At most so many exercises of another list. */
  void share(List<Item> other, int most) {
    Set<String> ids =
        other.stream()
            .filter(Activity.class::isInstance)
            .map(item -> ((Activity) item).id())
            .collect(Collectors.toSet());
    model.addLessOrEqual(sum(uses(use -> ids.contains(use.candidate.id()))), most);
  }

  void minimizeTieAt(long exactly) {
    model.addEquality(cost.build(), exactly);
    LinearExprBuilder tie = LinearExpr.newBuilder();
    uses.forEach(use -> tie.addTerm(use.taken, tie(item(use))));
    rests.forEach(rest -> tie.addTerm(rest.taken, tie(item(rest))));
    model.minimize(tie.build());
  }

  List<Item> items(CpSolver solver) {
    List<Item> items = new ArrayList<>();
    uses.stream().filter(use -> solver.booleanValue(use.taken)).map(this::item).forEach(items::add);
    rests.stream()
        .filter(rest -> solver.booleanValue(rest.taken))
        .map(this::item)
        .forEach(items::add);
    items.sort(Comparator.comparingInt(Item::start));
    return items;
  }

  private Item item(Use use) {
    return new Activity(use.candidate.id(), use.phase, minutes(use.start), minutes(use.length));
  }

  private Item item(Rest rest) {
    return new Pause(minutes(rest.start), minutes(rest.length));
  }

  /** The hash of one item is the tie of a list that holds nothing else. */
  private long tie(Item item) {
    return Checker.check(instance, List.of(item)).tie();
  }

  private void placeExercises() {
    for (Candidate candidate : instance.candidates()) {
      for (int phase = 0; phase < instance.phases().size(); phase++) {
        if (!instance.phases().get(phase).kinds().contains(candidate.kind())) {
          continue;
        }
        for (int i = 0; i < candidate.lengths().size(); i++) {
          int length = candidate.lengths().get(i) / instance.grid();
          for (int start = 0; start + length <= cells; start++) {
            Use use = new Use(model.newBoolVar("use"), candidate, phase, start, length);
            uses.add(use);
            long own = (long) candidate.cost() + candidate.lengthCosts().get(i);
            cost.addTerm(use.taken, own + energy(use));
          }
        }
      }
    }
  }

  private long energy(Use use) {
    long sum = 0;
    for (int cell = use.start; cell < use.end(); cell++) {
      sum += Math.abs(use.candidate.energy() - instance.curve().get(cell));
    }
    return (long) instance.weights().energy() * instance.grid() * sum;
  }

  private void placeBreaks() {
    if (instance.breakMinutes() > 0) {
      place(ORDINARY, 1, cells, instance.breakMinutes() / instance.grid());
    }
    for (int i = 0; i < instance.meals().size(); i++) {
      Meal meal = instance.meals().get(i);
      place(
          i,
          Math.max(1, meal.from() / instance.grid()),
          meal.to() / instance.grid(),
          meal.minutes() / instance.grid());
    }
  }

  private void place(int meal, int from, int to, int length) {
    for (int start = from; start <= to && start + length <= cells; start++) {
      Rest rest = new Rest(model.newBoolVar("rest"), meal, start, length);
      rests.add(rest);
      if (meal == ORDINARY) {
        cost.addTerm(rest.taken, instance.weights().pause());
      }
    }
  }

  /** Rule 1, and of rule 5 that an exercise follows each break. */
  private void order() {
    for (int cell = 0; cell < cells; cell++) {
      int here = cell;
      BoolVar cover = model.newBoolVar("covered");
      covered.add(cover);
      model.addEquality(
          sum(uses(use -> use.covers(here)), rests(rest -> rest.covers(here))), cover);
      if (cell > 0) {
        model.addLessOrEqual(cover, covered.get(cell - 1));
      }
      model.addLessOrEqual(breaksEndingAt(here), sum(uses(use -> use.start == here)));
    }
    model.addEquality(breaksEndingAt(cells), 0);
    model.addEquality(covered.get(0), 1);
  }

  /** Rule 2. */
  private void exercises() {
    for (Candidate candidate : instance.candidates()) {
      model.addLessOrEqual(sum(uses(use -> use.candidate.id().equals(candidate.id()))), 1);
    }
  }

  /** Rule 3: {@code begun(p, t)} says that phase p or a later one may stand at t. */
  private void phases() {
    List<BoolVar> before = new ArrayList<>();
    for (int number = 0; number < instance.phases().size(); number++) {
      int here = number;
      List<BoolVar> begun = new ArrayList<>();
      for (int cell = 0; cell < cells; cell++) {
        int now = cell;
        BoolVar on = model.newBoolVar("begun");
        begun.add(on);
        if (cell > 0) {
          model.addLessOrEqual(begun.get(cell - 1), on);
        }
        model.addLessOrEqual(sum(uses(use -> use.phase == here && use.start == now)), on);
        if (number > 0) {
          model.addLessOrEqual(on, before.get(cell));
          model.addLessOrEqual(
              sum(List.of(on), uses(use -> use.phase == here - 1 && use.start == now)), 1);
        }
      }
      before = begun;
      Phase phase = instance.phases().get(number);
      within(sum(uses(use -> use.phase == here)), phase.count());
      IntVar minutes = model.newIntVar(0, instance.cap(), "minutes");
      model.addEquality(exerciseMinutes(use -> use.phase == here), minutes);
      within(minutes, phase.minutes());
      long most = Math.max(instance.cap(), Math.abs((long) phase.target()) + instance.cap());
      IntVar off = model.newIntVar(0, most, "off");
      model.addGreaterOrEqual(LinearExpr.sum(args(off, minutes)), phase.target());
      model.addLessOrEqual(
          LinearExpr.weightedSum(args(minutes, off), new long[] {1, -1}), phase.target());
      cost.addTerm(off, instance.weights().share());
    }
  }

  private void within(LinearArgument value, Bounds bounds) {
    model.addGreaterOrEqual(value, bounds.min());
    model.addLessOrEqual(value, bounds.max());
  }

  /** Rule 4. */
  private void products() {
    for (String product : instance.products()) {
      if (instance.initial().contains(product)) {
        continue;
      }
      Predicate<Use> yields = use -> use.candidate.yields().contains(product);
      for (int cell = 0; cell < cells; cell++) {
        int now = cell;
        BoolVar there = model.newBoolVar("there");
        model.addLessOrEqual(there, sum(uses(yields.and(use -> use.end() <= now))));
        model.addLessOrEqual(
            sum(uses(use -> use.start == now && use.candidate.needs().contains(product))), there);
      }
      for (int number = 0; number < instance.phases().size(); number++) {
        int here = number;
        if (instance.phases().get(number).yields().contains(product)) {
          model.addGreaterOrEqual(sum(uses(yields.and(use -> use.phase <= here))), 1);
        }
      }
    }
  }

  /** Rule 5: no more than so many cells of exercises in a row. */
  private void stretches() {
    int most = instance.stretch().max() / instance.grid();
    for (int cell = 0; cell + most < cells; cell++) {
      LinearExprBuilder window = LinearExpr.newBuilder();
      for (int i = cell; i <= cell + most; i++) {
        int here = i;
        uses(use -> use.covers(here)).forEach(window::add);
      }
      model.addLessOrEqual(window.build(), most);
    }
  }

  /** Rule 5: each meal once, in order. */
  private void meals() {
    LinearArgument before = constant(0);
    for (int i = 0; i < instance.meals().size(); i++) {
      int number = i;
      LinearExprBuilder start = LinearExpr.newBuilder();
      LinearExprBuilder times = LinearExpr.newBuilder();
      for (Rest rest : rests) {
        if (rest.meal == number) {
          times.add(rest.taken);
          start.addTerm(rest.taken, rest.start);
        }
      }
      LinearExpr now = start.build();
      model.addEquality(times.build(), 1);
      model.addGreaterThan(now, before);
      before = now;
    }
  }

  /** Rule 6, and the idle minutes. */
  private void capAndIdle() {
    IntVar exercises = model.newIntVar(0, cells, "exercises");
    model.addEquality(exerciseCells(use -> true), exercises);
    IntVar buffer = model.newIntVar(0, cells, "buffer");
    int percent = instance.bufferPercent();
    LinearExpr over = LinearExpr.weightedSum(args(buffer, exercises), new long[] {100, -percent});
    model.addGreaterOrEqual(over, 0);
    model.addLessOrEqual(over, 99);
    IntVar idle = model.newIntVar(0, cells, "idle");
    model.addEquality(LinearExpr.newBuilder().add(end()).add(buffer).add(idle).build(), cells);
    cost.addTerm(idle, minutes(instance.weights().idle()));
  }

  /** Rule 7. */
  private void wishes() {
    for (String id : instance.include()) {
      model.addGreaterOrEqual(sum(uses(use -> use.candidate.id().equals(id))), 1);
    }
    for (Pin pin : instance.pins()) {
      model.addGreaterOrEqual(
          sum(uses(use -> use.candidate.id().equals(pin.id()) && minutes(use.start) == pin.at())),
          1);
    }
  }

  /** Rule 8: who may not follow whom. */
  private void neighbours() {
    Set<Integer> lengths = new TreeSet<>(rests.stream().map(Rest::length).toList());
    for (Apart rule : instance.rules().apart()) {
      for (int cell = 1; cell < cells; cell++) {
        int here = cell;
        List<BoolVar> first =
            uses(use -> use.end() == here && rule.first().contains(use.candidate.id()));
        model.addLessOrEqual(sum(first, then(rule, here)), 1);
        if (rule.acrossBreaks()) {
          for (int length : lengths) {
            List<BoolVar> between = rests(rest -> rest.start == here && rest.length == length);
            model.addLessOrEqual(sum(first, between, then(rule, here + length)), 2);
          }
        }
      }
    }
  }

  private List<BoolVar> then(Apart rule, int cell) {
    return uses(use -> use.start == cell && rule.then().contains(use.candidate.id()));
  }

  /** Rule 8: of whom there may be only so many. */
  private void counts() {
    for (AtMost rule : instance.rules().atMost()) {
      model.addLessOrEqual(sum(uses(use -> rule.of().contains(use.candidate.id()))), rule.most());
    }
  }

  private void monotony() {
    Set<String> formats =
        instance.candidates().stream().map(Candidate::format).collect(Collectors.toSet());
    Set<Integer> lengths = new TreeSet<>(rests.stream().map(Rest::length).toList());
    for (int cell = 1; cell < cells; cell++) {
      int here = cell;
      BoolVar twice = model.newBoolVar("twice");
      cost.addTerm(twice, instance.weights().monotony());
      for (String format : formats) {
        model.addLessOrEqual(
            LinearExpr.newBuilder()
                .add(sum(endsWith(format, here), startsWith(format, here)))
                .addTerm(twice, -1)
                .build(),
            1);
      }
      for (int length : lengths) {
        BoolVar across = model.newBoolVar("across");
        cost.addTerm(across, instance.weights().monotonyAcrossBreak());
        LinearExpr between = sum(rests(rest -> rest.start == here && rest.length == length));
        for (String format : formats) {
          model.addLessOrEqual(
              LinearExpr.newBuilder()
                  .add(sum(endsWith(format, here), startsWith(format, here + length)))
                  .add(between)
                  .addTerm(across, -1)
                  .build(),
              2);
        }
      }
    }
  }

  private List<BoolVar> endsWith(String format, int cell) {
    return uses(use -> use.end() == cell && use.candidate.format().equals(format));
  }

  private List<BoolVar> startsWith(String format, int cell) {
    return uses(use -> use.start == cell && use.candidate.format().equals(format));
  }

  /**
   * Each break that ended less than {@code stretch.min} before a stretch ends makes that stretch
   * too short by at least the difference; the last of them by exactly that.
   */
  private void rhythm() {
    for (int cell = 1; cell < cells; cell++) {
      int here = cell;
      LinearExpr ordinary = sum(rests(rest -> rest.start == here && rest.meal == ORDINARY));
      IntVar missing = missing();
      tooShort(missing, ordinary, here, constant(1), 0);
      for (int from = 1; from < cell; from++) {
        tooShort(missing, ordinary, here, breaksEndingAt(from), from);
      }
    }
    IntVar missing = missing();
    for (int end = 1; end <= cells; end++) {
      LinearExprBuilder last = LinearExpr.newBuilder().add(covered.get(end - 1));
      if (end < cells) {
        last.addTerm(covered.get(end), -1);
      }
      LinearExpr ends = last.build();
      for (int from = 1; from < end; from++) {
        tooShort(missing, ends, end, breaksEndingAt(from), from);
      }
    }
  }

  private IntVar missing() {
    int most = instance.stretch().min() / instance.grid();
    IntVar missing = model.newIntVar(0, most, "missing");
    cost.addTerm(missing, minutes(instance.weights().rhythm()));
    return missing;
  }

  /**
   * If the stretch that counts ends here and one began there, it misses what is under the least.
   */
  private void tooShort(
      IntVar missing, LinearArgument ends, int end, LinearArgument begins, int from) {
    int least = instance.stretch().min() / instance.grid();
    int under = least - (end - from);
    if (under > 0) {
      model.addGreaterOrEqual(
          LinearExpr.newBuilder()
              .add(missing)
              .addTerm(ends, -under)
              .addTerm(begins, -under)
              .add(under)
              .build(),
          0);
    }
  }

  private LinearExpr breaksEndingAt(int cell) {
    return sum(rests(rest -> rest.end() == cell));
  }

  private LinearExpr end() {
    return sum(covered);
  }

  private LinearExpr exerciseCells(Predicate<Use> such) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    uses.stream().filter(such).forEach(use -> sum.addTerm(use.taken, use.length));
    return sum.build();
  }

  private LinearExpr exerciseMinutes(Predicate<Use> such) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    uses.stream().filter(such).forEach(use -> sum.addTerm(use.taken, minutes(use.length)));
    return sum.build();
  }

  private List<BoolVar> uses(Predicate<Use> such) {
    return uses.stream().filter(such).map(Use::taken).toList();
  }

  private List<BoolVar> rests(Predicate<Rest> such) {
    return rests.stream().filter(such).map(Rest::taken).toList();
  }

  private int minutes(int ofCells) {
    return ofCells * instance.grid();
  }

  @SafeVarargs
  private static LinearExpr sum(List<BoolVar>... all) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (List<BoolVar> some : all) {
      some.forEach(sum::add);
    }
    return sum.build();
  }

  private static LinearArgument[] args(LinearArgument... all) {
    return all;
  }
}
