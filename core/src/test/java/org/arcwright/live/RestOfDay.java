package org.arcwright.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Wishes;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.Reduction;

/**
 * What is asked of the rest of a day, written down anew from the brief's own instance and from what
 * has run: the same rules, only that phases need not have their share of the time any more, nothing
 * is kept free at the close, and nothing has a price. It shares no code with the replanner.
 */
final class RestOfDay {
  private static final String BEFORE = "before";

  private final Instance base;
  private final Reduction reduction;
  private final Agenda plan;
  private final Stand stand;
  private final int grid;
  private final int from;
  private final int worked;
  private final int phase;
  private final int[] had;
  private final Set<String> done = new LinkedHashSet<>();
  private final Set<String> products;
  private final Optional<Stand.Past> running;

  RestOfDay(Reduction reduction, Agenda plan, Stand stand) {
    this.reduction = reduction;
    this.base = reduction.instance();
    this.plan = plan;
    this.stand = stand;
    this.grid = base.grid();
    this.products = new HashSet<>(base.initial());
    this.had = new int[base.phases().size()];
    this.running = stand.running().filter(past -> !past.isBreak());
    int reached = 0;
    int since = -1;
    for (Stand.Past past : stand.past()) {
      if (past.isBreak()) {
        since = -1;
        continue;
      }
      since = since < 0 ? (int) past.start().toMinutes() : since;
      reached = phaseOf(past.item());
      if (past.end().isPresent()) {
        done.add(past.item());
        had[reached]++;
        products.addAll(reduction.catalog().exercise(past.item()).orElseThrow().yields());
      }
    }
    this.phase = reached;
    this.from = from();
    int left = (int) stand.end().toMinutes() - from;
    int least = running.map(r -> soonest() - from).orElse(0);
    int most =
        base.stretch().max() - (left > base.stretch().min() ? least : Math.max(up(left), least));
    this.worked = since < 0 ? 0 : Math.max(0, Math.min(up(from - since), most));
  }

  private int from() {
    int now = (int) stand.now().toMinutes();
    if (running.isPresent()) {
      return now / grid * grid;
    }
    return up(
        stand
            .running()
            .map(pause -> (int) pause.start().plus(pause.planned().orElseThrow()).toMinutes())
            .map(over -> Math.max(over, now))
            .orElse(now));
  }

  /** When what runs may be over at the earliest. */
  private int soonest() {
    Stand.Past runs = running.orElseThrow();
    int planned = (int) runs.planned().orElseThrow().toMinutes();
    int least =
        candidate(runs.item()).map(c -> Math.min(planned, c.lengths().get(0))).orElse(planned);
    return Math.max(from + grid, up((int) runs.start().toMinutes() + least));
  }

  /**
   * All that may be asked, for each phase from which the day may go on: the one it has reached, and
   * the next if that one has had enough.
   */
  List<Instance> instances() {
    List<Instance> instances = new ArrayList<>();
    boolean begun = worked > 0 || running.isPresent();
    instances.add(instance(phase));
    if (!begun && phase + 1 < had.length && had[phase] >= base.phases().get(phase).count().min()) {
      instances.add(instance(phase + 1));
    }
    instances.removeIf(instance -> instance.phases().isEmpty() || instance.cap() <= worked);
    return instances;
  }

  private Instance instance(int first) {
    int origin = from - worked;
    int cap = ((int) stand.end().toMinutes() - origin) / grid * grid;
    List<Candidate> candidates = new ArrayList<>();
    List<Pin> pins = new ArrayList<>();
    Set<String> include = new LinkedHashSet<>();
    if (worked > 0) {
      candidates.add(fixed(BEFORE, worked, worked));
      pins.add(new Pin(BEFORE, 0));
    }
    running.ifPresent(
        runs -> {
          candidates.add(fixed(runs.item(), soonest() - from, base.stretch().max() - worked));
          pins.add(new Pin(runs.item(), worked));
        });
    for (Candidate each : base.candidates()) {
      if (!done.contains(each.id()) && !isRunning(each.id())) {
        candidates.add(withPlanned(each));
      }
    }
    for (String id : base.include()) {
      if (!done.contains(id) && !isRunning(id)) {
        include.add(id);
      }
    }
    for (Wishes.Pin pin : reduction.brief().wishes().pins()) {
      int minute = (int) reduction.brief().offset(pin.at()).toMinutes();
      if (!done.contains(pin.exercise()) && !isRunning(pin.exercise())) {
        if (minute >= from && minute < stand.end().toMinutes()) {
          pins.add(new Pin(pin.exercise(), minute - origin));
        } else {
          include.add(pin.exercise());
        }
      }
    }
    List<Instance.Phase> phases = new ArrayList<>();
    for (int p = first; p < had.length; p++) {
      phases.add(phase(p, cap));
    }
    return new Instance(
            grid,
            Math.max(grid, cap),
            Collections.nCopies(Math.max(grid, cap) / grid, 30),
            base.stretch(),
            base.breakMinutes(),
            meals(origin),
            0,
            base.products(),
            base.products().stream().filter(products::contains).toList(),
            phases,
            candidates,
            List.copyOf(include),
            pins,
            base.rules(),
            Weights.NONE)
        .freeOfCharge();
  }

  /**
   * Those that were not taken yet; one whose time is over comes as soon as what runs is over, but
   * only if there is a shortest stretch left behind it.
   */
  private List<Instance.Meal> meals(int origin) {
    List<Instance.Meal> meals = new ArrayList<>();
    int next = running.isPresent() ? soonest() : worked > 0 ? from : from + 3 * grid;
    long taken = stand.past().stream().filter(this::isMeal).count();
    for (Instance.Meal meal : base.meals().subList((int) taken, base.meals().size())) {
      long last = stand.end().toMinutes() - meal.minutes();
      if (next > meal.to() ? next + base.stretch().min() <= last : meal.from() < last) {
        meals.add(
            new Instance.Meal(
                Math.max(meal.from(), from) - origin,
                Math.max(meal.to(), next) - origin,
                meal.minutes()));
      }
    }
    return meals;
  }

  private boolean isMeal(Stand.Past past) {
    return past.isBreak()
        && base.meals().stream()
            .anyMatch(meal -> meal.minutes() == past.planned().orElseThrow().toMinutes());
  }

  /** What has been, or runs: nothing is asked of it, and it counts in the phase that is reached. */
  private Candidate fixed(String id, int least, int most) {
    List<Integer> lengths = new ArrayList<>();
    for (int length = least; length <= Math.max(least, most); length += grid) {
      lengths.add(length);
    }
    List<String> yields =
        reduction.catalog().exercise(id).stream()
            .flatMap(each -> each.yields().stream())
            .filter(base.products()::contains)
            .toList();
    return new Candidate(
        id, BEFORE, lengths, Collections.nCopies(lengths.size(), 0), 30, "", List.of(), yields, 0);
  }

  private Candidate withPlanned(Candidate each) {
    Set<Integer> lengths = new TreeSet<>(each.lengths());
    plan.activities().stream()
        .filter(activity -> activity.exercise().equals(each.id()))
        .forEach(activity -> lengths.add((int) activity.length().toMinutes()));
    return new Candidate(
        each.id(),
        each.kind(),
        List.copyOf(lengths),
        Collections.nCopies(lengths.size(), 0),
        each.energy(),
        each.format(),
        each.needs(),
        each.yields(),
        0);
  }

  private Instance.Phase phase(int p, int cap) {
    Instance.Phase whole = base.phases().get(p);
    Set<String> kinds = new HashSet<>(whole.kinds());
    int begun = 0;
    int runs = 0;
    if (p == phase) {
      kinds.add(BEFORE);
      runs = running.isPresent() ? 1 : 0;
      begun = (worked > 0 ? 1 : 0) + runs;
    }
    int least = Math.max(0, whole.count().min() - had[p] - runs);
    int most = whole.count().max() - had[p] - runs;
    return new Instance.Phase(
        whole.name(),
        kinds,
        new Bounds(Math.max(1, least + begun), most + begun),
        new Bounds(0, Math.max(0, cap)),
        0,
        whole.yields());
  }

  /** What a way does from now on, to be checked against one of the instances. */
  List<Item> items(Agenda way, Instance instance) {
    List<String> names = instance.phases().stream().map(Instance.Phase::name).toList();
    int origin = from - worked;
    List<Item> items = new ArrayList<>();
    if (worked > 0) {
      items.add(new Item.Activity(BEFORE, 0, 0, worked));
    }
    for (AgendaItem item : way.items()) {
      int start = (int) item.start().toMinutes() - origin;
      int length = (int) item.length().toMinutes();
      if (item instanceof Activity activity && isRunning(activity.exercise())) {
        items.add(new Item.Activity(activity.exercise(), 0, worked, start + length - worked));
      } else if (start >= worked && item instanceof Activity activity) {
        int number = names.indexOf(activity.phase());
        items.add(new Item.Activity(activity.exercise(), number, start, length));
      } else if (start >= worked) {
        items.add(new Item.Pause(start, length));
      }
    }
    return items;
  }

  private boolean isRunning(String id) {
    return running.filter(runs -> runs.item().equals(id)).isPresent();
  }

  private int phaseOf(String id) {
    String name =
        plan.activities().stream()
            .filter(activity -> activity.exercise().equals(id))
            .findFirst()
            .orElseThrow()
            .phase();
    return base.phases().stream().map(Instance.Phase::name).toList().indexOf(name);
  }

  private Optional<Candidate> candidate(String id) {
    return base.candidates().stream().filter(each -> each.id().equals(id)).findFirst();
  }

  private int up(int minutes) {
    return (minutes + grid - 1) / grid * grid;
  }
}
