package org.arcwright.examples.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.nary.alldifferent.conditions.Condition;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainBest;
import org.chocosolver.solver.search.strategy.selectors.variables.InputOrder;
import org.chocosolver.solver.search.strategy.strategy.IntStrategy;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The composition problem as a sequence for Choco (Prud'homme and Fages 2022): one variable for
 * each place in the agenda says what stands there, and tables over what may stand there say all
 * that follows from it. All times in here are cells.
 */
final class ChocoModel {
  /** What may stand at a place; the candidate is its number from 1, or 0 for a break or nothing. */
  private record Choice(Role role, int candidate, int phase, int length, int meal, int cost) {}

  private enum Role {
    EXERCISE,
    BREAK,
    MEAL,
    NOTHING
  }

  private final Model model = new Model();
  private final Instance instance;
  private final int cells;
  private final int places;
  private final List<Choice> choices = new ArrayList<>();
  private final IntVar[] what;
  private final IntVar[] start;
  private final IntVar[] length;
  private final BoolVar[] exercise;
  private final BoolVar[] rest;
  private final IntVar[] stretch;
  private final List<IntVar> prices = new ArrayList<>();
  private final IntVar cost;

  ChocoModel(Instance instance) {
    this.instance = instance;
    this.cells = instance.cells();
    choices();
    this.places = places();
    this.what = model.intVarArray("what", places, 0, choices.size() - 1);
    this.start = model.intVarArray("start", places + 1, 0, cells, true);
    this.length = each(choice -> choice.length);
    this.exercise = flags(choice -> choice.role == Role.EXERCISE ? 1 : 0);
    this.rest = flags(choice -> choice.role == Role.BREAK || choice.role == Role.MEAL ? 1 : 0);
    this.stretch =
        model.intVarArray("stretch", places + 1, 0, instance.stretch().max() / instance.grid());
    order();
    phases();
    products();
    windows();
    stretches();
    formats();
    capAndIdle();
    prices.addAll(List.of(each(choice -> choice.cost)));
    energy();
    cost = model.intVar("cost", 0, most());
    model.sum(prices.toArray(IntVar[]::new), "=", cost).post();
    model.setObjective(Model.MINIMIZE, cost);
  }

  Model model() {
    return model;
  }

  IntVar cost() {
    return cost;
  }

  /** From the first place to the last, that first which leaves the least cost possible. */
  IntStrategy inOrder() {
    return Search.intVarSearch(new InputOrder<>(model), new IntDomainBest(), what);
  }

  List<Item> items(Solution solution) {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < places; i++) {
      Choice choice = choices.get(solution.getIntVal(what[i]));
      int at = solution.getIntVal(start[i]) * instance.grid();
      int minutes = choice.length * instance.grid();
      if (choice.role == Role.EXERCISE) {
        String id = instance.candidates().get(choice.candidate - 1).id();
        items.add(new Activity(id, choice.phase, at, minutes));
      } else if (choice.role != Role.NOTHING) {
        items.add(new Pause(at, minutes));
      }
    }
    return items;
  }

  private void choices() {
    int grid = instance.grid();
    for (int c = 0; c < instance.candidates().size(); c++) {
      Candidate candidate = instance.candidates().get(c);
      for (int p = 0; p < instance.phases().size(); p++) {
        if (instance.phases().get(p).kinds().contains(candidate.kind())) {
          for (int l = 0; l < candidate.lengths().size(); l++) {
            int own = candidate.cost() + candidate.lengthCosts().get(l);
            int of = candidate.lengths().get(l) / grid;
            choices.add(new Choice(Role.EXERCISE, c + 1, p, of, -1, own));
          }
        }
      }
    }
    if (instance.breakMinutes() > 0) {
      int of = instance.breakMinutes() / grid;
      choices.add(new Choice(Role.BREAK, 0, -1, of, -1, instance.weights().pause()));
    }
    for (int m = 0; m < instance.meals().size(); m++) {
      choices.add(new Choice(Role.MEAL, 0, -1, instance.meals().get(m).minutes() / grid, m, 0));
    }
    choices.add(new Choice(Role.NOTHING, 0, -1, 0, -1, 0));
  }

  /** As many as could ever be needed: between two breaks stands at least one exercise. */
  private int places() {
    int shortest = cells;
    for (Choice choice : choices) {
      if (choice.role == Role.EXERCISE) {
        shortest = Math.min(shortest, choice.length);
      }
    }
    long most = 0;
    for (Phase phase : instance.phases()) {
      most += phase.count().max();
    }
    int exercises = (int) Math.min(most, cells / shortest);
    int pause = instance.breakMinutes() / instance.grid();
    int breaks = pause == 0 ? 0 : cells / (pause + shortest);
    return Math.max(1, exercises + Math.min(exercises, breaks + instance.meals().size()));
  }

  /** Rules 1, 2 and 7, and of rule 5 that breaks stand apart. */
  private void order() {
    model.arithm(start[0], "=", 0).post();
    model.arithm(exercise[0], "=", 1).post();
    model.arithm(rest[places - 1], "=", 0).post();
    for (int i = 0; i < places; i++) {
      model.sum(new IntVar[] {start[i], length[i]}, "=", start[i + 1]).post();
      if (i + 1 < places) {
        model.arithm(rest[i], "<=", exercise[i + 1]).post();
        model.arithm(rest[i + 1], "<=", exercise[i]).post();
        model.sum(new IntVar[] {exercise[i], rest[i]}, ">=", exercise[i + 1]).post();
      }
    }
    IntVar[] candidates = each(choice -> choice.candidate);
    model.allDifferentUnderCondition(candidates, Condition.EXCEPT_0, false).post();
    for (String id : instance.include()) {
      appears(candidates, id);
    }
    for (Pin pin : instance.pins()) {
      appears(candidates, pin.id());
    }
  }

  private void appears(IntVar[] candidates, String id) {
    for (int c = 0; c < instance.candidates().size(); c++) {
      if (instance.candidates().get(c).id().equals(id)) {
        model.count(c + 1, candidates, model.intVar(1)).post();
        return;
      }
    }
    model.falseConstraint().post();
  }

  /** Rule 3. */
  private void phases() {
    int last = instance.phases().size() - 1;
    IntVar[] least = each(choice -> choice.role == Role.EXERCISE ? choice.phase : 0);
    IntVar[] most = each(choice -> choice.role == Role.EXERCISE ? choice.phase : last);
    IntVar[] phase = model.intVarArray("phase", places, 0, last);
    for (int i = 0; i < places; i++) {
      model.arithm(phase[i], ">=", least[i]).post();
      model.arithm(phase[i], "<=", most[i]).post();
      if (i > 0) {
        model.arithm(phase[i], ">=", phase[i - 1]).post();
      }
    }
    for (int p = 0; p <= last; p++) {
      int number = p;
      Phase here = instance.phases().get(p);
      IntVar count = model.intVar("count", 0, places);
      model.sum(each(choice -> choice.phase == number ? 1 : 0), "=", count).post();
      model.arithm(count, ">=", here.count().min()).post();
      model.arithm(count, "<=", here.count().max()).post();
      IntVar minutes = model.intVar("minutes", 0, instance.cap());
      model
          .sum(each(choice -> choice.phase == number ? minutes(choice.length) : 0), "=", minutes)
          .post();
      model.arithm(minutes, ">=", here.minutes().min()).post();
      model.arithm(minutes, "<=", here.minutes().max()).post();
      price(
          minutes,
          table(
              instance.cap(),
              m -> instance.weights().share() * Math.abs(m - here.target())));
    }
  }

  /** Rule 4. */
  private void products() {
    for (String product : instance.products()) {
      if (instance.initial().contains(product)) {
        continue;
      }
      IntVar[] yields = each(choice -> yields(choice, product) ? 1 : 0);
      IntVar[] needs = each(choice -> needs(choice, product) ? 1 : 0);
      IntVar there = model.intVar(0);
      for (int i = 0; i < places; i++) {
        model.arithm(needs[i], "<=", there).post();
        IntVar before = there;
        there = model.boolVar("there");
        model.max(there, before, yields[i]).post();
      }
      for (int p = 0; p < instance.phases().size(); p++) {
        int number = p;
        if (instance.phases().get(p).yields().contains(product)) {
          model
              .sum(
                  each(choice -> choice.phase <= number && yields(choice, product) ? 1 : 0),
                  ">=",
                  1)
              .post();
        }
      }
    }
  }

  private boolean yields(Choice choice, String product) {
    return choice.role == Role.EXERCISE && candidate(choice).yields().contains(product);
  }

  private boolean needs(Choice choice, String product) {
    return choice.role == Role.EXERCISE && candidate(choice).needs().contains(product);
  }

  /** Rule 5 on meals, rule 7 on pins: what may start when, and meals in order. */
  private void windows() {
    IntVar[] earliest = each(this::earliest);
    IntVar[] latest = each(this::latest);
    for (int i = 0; i < places; i++) {
      model.arithm(start[i], ">=", earliest[i]).post();
      model.arithm(start[i], "<=", latest[i]).post();
    }
    IntVar had = model.intVar(0);
    int meals = instance.meals().size();
    IntVar[] isMeal = each(choice -> choice.role == Role.MEAL ? 1 : 0);
    IntVar[] least = each(choice -> choice.role == Role.MEAL ? choice.meal : 0);
    IntVar[] most = each(choice -> choice.role == Role.MEAL ? choice.meal : meals);
    for (int i = 0; i < places; i++) {
      model.arithm(had, ">=", least[i]).post();
      model.arithm(had, "<=", most[i]).post();
      IntVar now = model.intVar("had", 0, meals);
      model.sum(new IntVar[] {had, isMeal[i]}, "=", now).post();
      had = now;
    }
    model.arithm(had, "=", meals).post();
  }

  private int earliest(Choice choice) {
    int at = 0;
    if (choice.role == Role.MEAL) {
      at = instance.meals().get(choice.meal).from() / instance.grid();
    } else if (choice.role == Role.EXERCISE) {
      for (Pin pin : instance.pins()) {
        at = pin.id().equals(candidate(choice).id()) ? Math.max(at, pin.at()) : at;
      }
      at /= instance.grid();
    }
    return Math.min(at, cells + 1);
  }

  private int latest(Choice choice) {
    int at = instance.cap();
    if (choice.role == Role.MEAL) {
      Meal meal = instance.meals().get(choice.meal);
      at = meal.to() < meal.from() ? -1 : meal.to();
    } else if (choice.role == Role.EXERCISE) {
      for (Pin pin : instance.pins()) {
        at = pin.id().equals(candidate(choice).id()) ? Math.min(at, pin.at()) : at;
      }
    }
    return at < 0 ? -1 : at / instance.grid();
  }

  /** Rule 5 on stretches, and what short ones cost. */
  private void stretches() {
    model.arithm(stretch[0], "=", 0).post();
    int[] missing =
        table(
            instance.stretch().max() / instance.grid(),
            s -> instance.weights().rhythm() * Math.max(0, instance.stretch().min() - minutes(s)));
    BoolVar[] pauses = flags(choice -> choice.role == Role.BREAK ? 1 : 0);
    for (int i = 0; i < places; i++) {
      IntVar longer = model.intVar("longer", 0, cells);
      IntVar worked = model.intVar("worked", 0, cells);
      model.times(length[i], exercise[i], worked).post();
      model.sum(new IntVar[] {stretch[i], worked}, "=", longer).post();
      model.times(longer, rest[i].not(), stretch[i + 1]).post();
      tooShort(missing, stretch[i], pauses[i]);
    }
    BoolVar any = model.boolVar("any");
    model.max(any, rest).post();
    tooShort(missing, stretch[places], any);
  }

  private void tooShort(int[] missing, IntVar of, BoolVar counts) {
    int most = Arrays.stream(missing).max().orElse(0);
    IntVar under = model.intVar("under", 0, most);
    model.element(under, missing, of).post();
    IntVar price = model.intVar("short", 0, most);
    model.times(under, counts, price).post();
    prices.add(price);
  }

  private void formats() {
    List<String> names =
        instance.candidates().stream().map(Candidate::format).distinct().toList();
    IntVar[] format =
        each(
            choice ->
                choice.role == Role.EXERCISE ? 1 + names.indexOf(candidate(choice).format()) : 0);
    for (int i = 1; i < places; i++) {
      BoolVar next = same(format[i - 1], format[i]);
      prices.add(model.mul(next, instance.weights().monotony()));
      if (i > 1) {
        BoolVar same = same(format[i - 2], format[i]);
        IntVar twice = model.intVar("twice", 0, 1);
        model.times(same, rest[i - 1], twice).post();
        prices.add(model.mul(twice, instance.weights().monotonyAcrossBreak()));
      }
    }
  }

  /** Whether two formats are the same; no format is 0. */
  private BoolVar same(IntVar before, IntVar after) {
    BoolVar equal = model.arithm(before, "=", after).reify();
    BoolVar some = model.arithm(after, ">", 0).reify();
    return model.and(equal, some).reify();
  }

  /** Rule 6, and the idle minutes. */
  private void capAndIdle() {
    IntVar worked = model.intVar("worked", 0, cells);
    model.sum(each(choice -> choice.role == Role.EXERCISE ? choice.length : 0), "=", worked).post();
    int[] buffers = table(cells, c -> instance.buffer(minutes(c)) / instance.grid());
    IntVar buffer = model.intVar("buffer", 0, buffers[cells]);
    model.element(buffer, buffers, worked).post();
    IntVar idle = model.intVar("idle", 0, cells);
    model.sum(new IntVar[] {start[places], buffer, idle}, "=", cells).post();
    prices.add(model.mul(idle, minutes(instance.weights().idle())));
  }

  private void energy() {
    Map<List<Integer>, Integer> classes = new LinkedHashMap<>();
    for (Choice choice : choices) {
      classes.putIfAbsent(energyClass(choice), classes.size());
    }
    int[] sums = new int[classes.size() * (cells + 1)];
    classes.forEach(
        (of, number) -> {
          for (int at = 0; at <= cells; at++) {
            int sum = 0;
            for (int cell = at; cell < Math.min(cells, at + of.get(1)); cell++) {
              sum += Math.abs(of.get(0) - instance.curve().get(cell));
            }
            sums[number * (cells + 1) + at] = minutes(instance.weights().energy()) * sum;
          }
        });
    IntVar[] rows = each(choice -> classes.getOrDefault(energyClass(choice), 0) * (cells + 1));
    for (int i = 0; i < places; i++) {
      IntVar index = model.intVar("cell", 0, sums.length - 1);
      model.sum(new IntVar[] {rows[i], start[i]}, "=", index).post();
      price(index, sums);
    }
  }

  /** Energy and the cells that have it; a break has none. */
  private List<Integer> energyClass(Choice choice) {
    return choice.role == Role.EXERCISE
        ? List.of(candidate(choice).energy(), choice.length)
        : List.of(0, 0);
  }

  private void price(IntVar index, int[] table) {
    IntVar price = model.intVar("price", 0, Arrays.stream(table).max().orElse(0));
    model.element(price, table, index).post();
    prices.add(price);
  }

  private int most() {
    long most = 0;
    for (IntVar price : prices) {
      most += price.getUB();
    }
    return (int) Math.min(most, IntVar.MAX_INT_BOUND);
  }

  private Candidate candidate(Choice choice) {
    return instance.candidates().get(choice.candidate - 1);
  }

  private int minutes(int ofCells) {
    return ofCells * instance.grid();
  }

  /** For each place, what follows from what stands there. */
  private IntVar[] each(ToIntFunction<Choice> follows) {
    int[] table = choices.stream().mapToInt(follows).toArray();
    int least = Arrays.stream(table).min().orElse(0);
    int most = Arrays.stream(table).max().orElse(0);
    return Arrays.stream(what)
        .map(
            choice -> {
              IntVar value = model.intVar("value", least, most);
              model.element(value, table, choice).post();
              return value;
            })
        .toArray(IntVar[]::new);
  }

  private BoolVar[] flags(ToIntFunction<Choice> follows) {
    int[] table = choices.stream().mapToInt(follows).toArray();
    return Arrays.stream(what)
        .map(
            choice -> {
              BoolVar value = model.boolVar("flag");
              model.element(value, table, choice).post();
              return value;
            })
        .toArray(BoolVar[]::new);
  }

  private static int[] table(int most, IntUnaryOperator of) {
    return IntStream.rangeClosed(0, most).map(of).toArray();
  }
}
