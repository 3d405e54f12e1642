package org.arcwright.live;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * What is left of a day as an instance. The work since the last rest stands in it as a first item
 * of its own, so that the next break comes as soon as it should; what runs is tied to its place
 * behind that. The closing buffer is a fixed time taken off the end. That planned exercises keep
 * their order is said with products that each leaves for the next.
 */
final class RestInstance {
  private final Rest rest;
  private final RestCandidates makers;
  private final Instance base;
  private final int cap;
  private final List<Candidate> candidates = new ArrayList<>();
  private final List<Instance.Phase> phases = new ArrayList<>();
  private final Set<String> include = new LinkedHashSet<>();
  private final List<Pin> pins = new ArrayList<>();

  private RestInstance(Rest rest, int keptFree) {
    this.rest = rest;
    this.makers = new RestCandidates(rest);
    this.base = rest.base.instance();
    this.cap = (rest.end - keptFree - origin(rest)) / rest.grid * rest.grid;
  }

  /** The minute of the day at which the instance begins. */
  static int origin(Rest rest) {
    return rest.from - rest.worked;
  }

  /** The instance for a recipe; nothing if it is plain that nothing fits. */
  static Optional<Instance> of(Rest rest, Recipe recipe) {
    return new RestInstance(rest, recipe.keptFree()).fixed(recipe);
  }

  /**
   * The instance in which what is left may be anything, so long as these phases are gone through.
   *
   * @param numbers of phases, in order
   * @param wishes whether the brief's wishes count
   */
  static Optional<Instance> anew(Rest rest, List<Integer> numbers, boolean wishes, int keptFree) {
    return new RestInstance(rest, keptFree).free(numbers, wishes);
  }

  private Optional<Instance> fixed(Recipe recipe) {
    List<Activity> loose = recipe.kept().stream().filter(makers::isLoose).toList();
    List<Activity> settled = recipe.kept().stream().filter(a -> !makers.isLoose(a)).toList();
    begin(recipe.sizes());
    for (Activity activity : recipe.kept()) {
      String kind =
          loose.contains(activity) ? makers.kindOf(activity) : makers.plannedIn(home(activity));
      candidates.add(makers.planned(activity, recipe.sizes(), kind));
    }
    loose.forEach(activity -> include.add(activity.exercise()));
    recipe.extra().ifPresent(extra -> candidates.addAll(makers.others(extra.most())));
    Set<String> looseKinds = new HashSet<>();
    loose.forEach(activity -> looseKinds.add(makers.kindOf(activity)));
    for (int p = rest.phase; p < base.phases().size(); p++) {
      int number = p;
      boolean extra = recipe.extra().filter(room -> room.phase() == number).isPresent();
      int kept = count(settled, p) + (extra ? 1 : 0);
      int planned = count(rest.planned(), p);
      boolean tooMany = extra && kept > Math.max(planned, most(p));
      if (tooMany || kept < Math.min(fewest(p), planned)) {
        return Optional.empty();
      }
      Set<String> kinds = new HashSet<>(base.phases().get(p).kinds());
      if (!extra) {
        kinds.retainAll(looseKinds);
      }
      if (!add(p, kinds, kept, kept + loose.size())) {
        return Optional.empty();
      }
    }
    List<String> order =
        settled.stream().map(Activity::exercise).filter(id -> !rest.tied.containsKey(id)).toList();
    if (recipe.extra().isPresent() && !order.isEmpty()) {
      include.add(order.get(order.size() - 1));
    }
    tie(candidates.stream().map(Candidate::id).toList());
    return build(order);
  }

  private Optional<Instance> free(List<Integer> numbers, boolean wishes) {
    begin(Recipe.SHORTER);
    for (Activity activity : rest.planned()) {
      String kind = makers.kindOf(activity);
      candidates.add(
          makers.planned(
              activity, Recipe.ANY, kind.isEmpty() ? makers.plannedIn(home(activity)) : kind));
    }
    candidates.addAll(makers.others(base.stretch().max()));
    for (int p : numbers) {
      int most = Math.max(most(p), count(rest.planned(), p));
      if (!add(p, base.phases().get(p).kinds(), Math.max(fewest(p), first(p) > 0 ? 0 : 1), most)) {
        return Optional.empty();
      }
    }
    if (wishes) {
      base.include().stream()
          .filter(id -> !rest.done.contains(id) && !rest.isRunning(id))
          .forEach(include::add);
      rest.untied.keySet().stream()
          .filter(id -> !base.include().contains(id))
          .forEach(include::add);
      tie(List.copyOf(rest.tied.keySet()));
    }
    return build(List.of());
  }

  /** What has been, and what runs. */
  private void begin(Recipe.Sizes sizes) {
    if (rest.worked > 0) {
      candidates.add(makers.soFar());
      pins.add(new Pin(RestCandidates.SO_FAR, 0));
    }
    rest.running.ifPresent(
        running -> {
          candidates.add(makers.running(running, sizes));
          pins.add(new Pin(running.activity().exercise(), rest.worked));
        });
  }

  private void tie(List<String> ids) {
    rest.tied.forEach(
        (id, minute) -> {
          if (ids.contains(id)) {
            pins.add(new Pin(id, minute - origin(rest)));
          }
        });
  }

  /** Items that stand in a phase before all others: the work so far, and what runs. */
  private int first(int p) {
    return p == rest.phase ? (rest.worked > 0 ? 1 : 0) + (rest.running.isPresent() ? 1 : 0) : 0;
  }

  /** How many exercises a phase must still have behind what runs. */
  private int fewest(int p) {
    return Math.max(0, base.phases().get(p).count().min() - had(p));
  }

  /** How many it may still have. */
  private int most(int p) {
    return Math.max(0, base.phases().get(p).count().max() - had(p));
  }

  private int had(int p) {
    return rest.doneIn[p] + (p == rest.phase && rest.running.isPresent() ? 1 : 0);
  }

  private int count(List<Activity> activities, int p) {
    return (int) activities.stream().filter(a -> !makers.isLoose(a) && homeNumber(a) == p).count();
  }

  private int homeNumber(Activity activity) {
    return Math.max(rest.phase, rest.phaseNumber(activity.phase()));
  }

  private String home(Activity activity) {
    return base.phases().get(homeNumber(activity)).name();
  }

  /**
   * Adds a phase. One in which nothing takes place any more is passed over; what it would have to
   * leave is due in the phase before it, or must exist.
   */
  private boolean add(int p, Set<String> kinds, int least, int most) {
    Set<String> yields = new TreeSet<>(base.phases().get(p).yields());
    yields.retainAll(makers.promised());
    int first = first(p);
    if (least + first == 0) {
      yields.removeAll(rest.products);
      if (phases.isEmpty()) {
        return yields.isEmpty();
      }
      Instance.Phase before = phases.remove(phases.size() - 1);
      yields.addAll(before.yields());
      phases.add(phase(before.name(), before.kinds(), before.count(), yields));
      return true;
    }
    Set<String> all = new HashSet<>(kinds);
    all.add(makers.plannedIn(base.phases().get(p).name()));
    if (p == rest.phase) {
      all.add(RestCandidates.SO_FAR);
    }
    Bounds count = new Bounds(least + first, most + first);
    phases.add(phase(base.phases().get(p).name(), all, count, yields));
    return true;
  }

  private Instance.Phase phase(String name, Set<String> kinds, Bounds count, Set<String> yields) {
    return new Instance.Phase(
        name, kinds, count, new Bounds(0, Math.max(0, cap)), 0, List.copyOf(yields));
  }

  private Optional<Instance> build(List<String> order) {
    if (cap <= rest.worked || phases.isEmpty()) {
      return Optional.empty();
    }
    Set<String> products = new TreeSet<>();
    candidates.forEach(candidate -> products.addAll(candidate.needs()));
    phases.forEach(phase -> products.addAll(phase.yields()));
    Set<String> wished = new HashSet<>(include);
    pins.forEach(pin -> wished.add(pin.id()));
    boolean ordered = products.size() + wished.size() + order.size() <= Instance.MOST_BITS;
    List<Candidate> all = new ArrayList<>();
    for (Candidate candidate : candidates) {
      List<String> needs = new ArrayList<>(candidate.needs());
      List<String> yields = new ArrayList<>(candidate.yields());
      yields.retainAll(products);
      int place = ordered ? order.indexOf(candidate.id()) : -1;
      if (place > 0) {
        needs.add("after " + order.get(place - 1));
      }
      if (place >= 0 && place < order.size() - 1) {
        yields.add("after " + candidate.id());
      }
      all.add(with(candidate, needs, yields));
    }
    List<String> named = new ArrayList<>(products);
    for (int i = 0; ordered && i < order.size() - 1; i++) {
      named.add("after " + order.get(i));
    }
    Weights weights = base.weights();
    return Optional.of(
        new Instance(
            rest.grid,
            cap,
            curve(),
            base.stretch(),
            base.breakMinutes(),
            meals(),
            0,
            named,
            products.stream().filter(rest.products::contains).toList(),
            phases,
            all,
            List.copyOf(include),
            pins,
            rules(),
            new Weights(
                weights.energy(),
                0,
                weights.monotony(),
                weights.monotonyAcrossBreak(),
                weights.rhythm(),
                weights.pause(),
                weights.idle())));
  }

  /**
   * A firm's own rules as they hold from here on: the work so far stands for what was last at work,
   * and what has been counts. A plan that breaks a rule was agreed upon all the same.
   */
  private Rules rules() {
    List<Apart> apart = new ArrayList<>();
    for (Apart rule : base.rules().apart()) {
      Set<String> first = new HashSet<>(rule.first());
      if (rest.lastOver().filter(first::contains).isPresent()) {
        first.add(RestCandidates.SO_FAR);
      }
      apart.add(new Apart(rule.name(), first, rule.then(), rule.acrossBreaks()));
    }
    List<AtMost> atMost = new ArrayList<>();
    for (AtMost rule : base.rules().atMost()) {
      int left = rule.most() - (int) rest.done.stream().filter(rule.of()::contains).count();
      int agreed =
          (int) rest.planned().stream().filter(a -> rule.of().contains(a.exercise())).count();
      int runs =
          rest.running.filter(r -> rule.of().contains(r.activity().exercise())).isPresent() ? 1 : 0;
      atMost.add(new AtMost(rule.name(), rule.of(), Math.max(left, agreed + runs)));
    }
    return new Rules(apart, atMost);
  }

  private static Candidate with(Candidate candidate, List<String> needs, List<String> yields) {
    return new Candidate(
        candidate.id(),
        candidate.kind(),
        candidate.lengths(),
        candidate.lengthCosts(),
        candidate.energy(),
        candidate.format(),
        needs,
        yields,
        candidate.cost());
  }

  /** The energy wished for at the real time of day; beyond the plan's end as at its end. */
  private List<Integer> curve() {
    List<Integer> curve = new ArrayList<>();
    long whole = 2 * rest.base.brief().cap().toMinutes();
    for (int minute = origin(rest); minute < origin(rest) + cap; minute += rest.grid) {
      long part = Math.max(0, Math.min(whole, 2L * minute + rest.grid));
      curve.add(
          minute < rest.from
              ? RestCandidates.ANY_ENERGY
              : rest.base.brief().curve().at(part, whole));
    }
    return curve;
  }

  private List<Instance.Meal> meals() {
    int origin = origin(rest);
    return rest.meals.stream()
        .map(meal -> new Instance.Meal(meal.from() - origin, meal.to() - origin, meal.minutes()))
        .toList();
  }
}
