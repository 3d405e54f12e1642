package org.arcwright.live;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.reduce.Reduction;

/**
 * What is left of a day, in whole minutes from the planned start: from when it can be planned, what
 * exists, what is still planned, and how long people have been at work since they last rested.
 */
final class Rest {
  /** What runs: an exercise, and until when it may and would take. */
  record Running(Activity activity, int began, int earliest, int natural, int latest) {}

  final Reduction base;
  final Agenda agenda;
  final Stand stand;
  final int grid;
  final int now;
  final int end;

  /** From when on times can still be changed, on the grid; what runs is planned from here, too. */
  final int from;

  /**
   * Minutes of work since the last rest, on the grid; never more than leaves room for what runs,
   * nor, once less is left of the day than a shortest stretch, for all of that: so near the end
   * people would rather be done than rest.
   */
  final int worked;

  final Optional<Running> running;

  /** Items of the agenda that are still to come, in its order. */
  final List<AgendaItem> ahead;

  /** Ids of the exercises that are over. */
  final Set<String> done = new LinkedHashSet<>();

  /** Ids of work products that exist. */
  final Set<String> products = new HashSet<>();

  /** Number of the phase that the day has reached, and how many exercises each has had. */
  final int phase;

  final int[] doneIn;

  /** Meals still to come, and what is tied to a time that is still to come. */
  final List<Instance.Meal> meals;

  final Map<String, Integer> tied = new LinkedHashMap<>();

  /** What was tied to a time that is over or that may move, and to which. */
  final Map<String, Integer> untied = new LinkedHashMap<>();

  private final Map<String, Activity> inAgenda = new HashMap<>();
  private final Map<String, Candidate> candidates = new HashMap<>();

  Rest(Reduction base, Agenda agenda, Stand stand, Set<String> movable) {
    this.base = base;
    this.agenda = agenda;
    this.stand = stand;
    this.grid = base.instance().grid();
    this.now = (int) stand.now().toMinutes();
    this.end = (int) stand.end().toMinutes();
    agenda.activities().forEach(activity -> inAgenda.putIfAbsent(activity.exercise(), activity));
    base.instance().candidates().forEach(each -> candidates.put(each.id(), each));
    this.doneIn = new int[base.goal().arc().size()];
    this.ahead = agenda.items().subList(Stand.begun(agenda, stand.past()), agenda.items().size());
    this.phase = readPast();
    this.from = from();
    this.running = stand.running().filter(past -> !past.isBreak()).map(this::running);
    this.worked = worked();
    this.meals = mealsAhead();
    tie(movable);
  }

  /** Notes what is over, and returns the phase that the day has reached. */
  private int readPast() {
    products.addAll(base.instance().initial());
    int reached = 0;
    for (Stand.Past past : stand.past()) {
      if (past.isBreak()) {
        continue;
      }
      reached = Math.max(reached, phaseOf(past.item()).orElse(reached));
      if (past.end().isPresent() && done.add(past.item())) {
        doneIn[reached]++;
        yieldsOf(past.item()).forEach(products::add);
      } else if (past.end().isEmpty() && done.remove(past.item())) {
        doneIn[reached]--;
      }
    }
    return reached;
  }

  private Optional<Integer> phaseOf(String id) {
    Activity activity = inAgenda.get(id);
    return activity == null
        ? Optional.empty()
        : Optional.of(phaseNumber(activity.phase())).filter(number -> number >= 0);
  }

  /** The number of a phase in the goal's arc; -1 if it has none of that name. */
  int phaseNumber(String name) {
    List<Phase> arc = base.goal().arc();
    for (int i = 0; i < arc.size(); i++) {
      if (arc.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Every work product that an exercise leaves. */
  Set<String> yieldsOf(String id) {
    return base.catalog().exercise(id).map(Exercise::yields).orElse(Set.of());
  }

  private int from() {
    Optional<Stand.Past> last = stand.running();
    if (last.isPresent() && !last.get().isBreak()) {
      return now / grid * grid;
    }
    int free = now;
    if (last.isPresent()) {
      Duration length = last.get().planned().orElse(base.brief().rhythm().pause());
      free = Math.max(now, (int) last.get().start().plus(length).toMinutes());
    }
    return up(free);
  }

  private Running running(Stand.Past past) {
    Duration before = Duration.ZERO;
    for (Stand.Past other : stand.past()) {
      if (other.item().equals(past.item()) && other.end().isPresent()) {
        before = before.plus(other.end().get().minus(other.start()));
      }
    }
    Activity activity = activity(past.item(), past.start(), past.planned());
    int began = (int) past.start().toMinutes();
    int counted = (int) past.start().minus(before).toMinutes();
    List<Integer> lengths = lengths(activity);
    int soonest = Math.max(from + grid, up(counted + lengths.get(0)));
    int planned = counted + (int) activity.length().toMinutes();
    int natural = Math.max(soonest, (planned + grid / 2) / grid * grid);
    int latest = Math.max(natural, counted + lengths.get(lengths.size() - 1));
    return new Running(activity, began, soonest, natural, latest / grid * grid);
  }

  /** An item of the day as the agenda, the catalog or the brief know it. */
  Activity activity(String id, Duration start, Optional<Duration> length) {
    Activity planned = inAgenda.get(id);
    Duration takes =
        length.orElseGet(
            () ->
                planned != null
                    ? planned.length()
                    : Duration.ofMinutes(candidate(id).map(Rest::usual).orElse(3 * grid)));
    if (planned != null) {
      return new Activity(
          id,
          planned.title(),
          planned.kind(),
          planned.phase(),
          start,
          takes,
          planned.format(),
          planned.energy());
    }
    String phaseName = base.goal().arc().get(phase).name();
    return Titles.activity(base, id, phaseName, start, takes);
  }

  private static int usual(Candidate candidate) {
    int place = candidate.lengthCosts().indexOf(0);
    return candidate.lengths().get(Math.max(0, place));
  }

  /** The lengths that an exercise may take, with its planned one among them, ascending. */
  List<Integer> lengths(Activity activity) {
    Candidate candidate = candidates.get(activity.exercise());
    Set<Integer> lengths = new TreeSet<>();
    if (candidate != null) {
      lengths.addAll(candidate.lengths());
    }
    lengths.add(planned(activity));
    return List.copyOf(lengths);
  }

  /** Its planned length on the grid, within a stretch. */
  int planned(Activity activity) {
    int minutes = (int) activity.length().toMinutes();
    int rounded = (minutes + grid / 2) / grid * grid;
    return Math.max(grid, Math.min(rounded, base.instance().stretch().max()));
  }

  /** The candidate of that id, if the brief allows it. */
  Optional<Candidate> candidate(String id) {
    return Optional.ofNullable(candidates.get(id));
  }

  /** Exercises that are planned and still to come, in order. */
  List<Activity> planned() {
    List<Activity> planned = new ArrayList<>();
    for (AgendaItem item : ahead) {
      if (item instanceof Activity activity
          && !done.contains(activity.exercise())
          && !isRunning(activity.exercise())) {
        planned.add(activity);
      }
    }
    return planned;
  }

  boolean isRunning(String id) {
    return running.filter(now -> now.activity().exercise().equals(id)).isPresent();
  }

  /** What was over last, if any exercise was. */
  Optional<String> lastOver() {
    return stand.past().stream()
        .filter(past -> !past.isBreak() && past.end().isPresent())
        .reduce((one, next) -> next)
        .map(Stand.Past::item);
  }

  /** A while in which nothing ran counts as a rest if it was as long as a break. */
  private int worked() {
    int pause = (int) base.brief().rhythm().pause().toMinutes();
    int since = Integer.MIN_VALUE;
    int last = Integer.MIN_VALUE;
    for (Stand.Past past : stand.past()) {
      int start = (int) past.start().toMinutes();
      if (past.isBreak()) {
        since = Integer.MIN_VALUE;
        continue;
      }
      boolean rested = since == Integer.MIN_VALUE || (pause > 0 && start - last >= pause);
      since = rested ? start : since;
      last = past.end().map(time -> (int) time.toMinutes()).orElse(now);
    }
    if (since == Integer.MIN_VALUE || (pause > 0 && from - last >= pause)) {
      return 0;
    }
    int least = running.map(r -> r.earliest() - from).orElse(0);
    boolean nearEnd = end - from <= base.instance().stretch().min();
    int needed = nearEnd ? Math.max(least, up(end - from)) : least;
    return Math.max(0, Math.min(up(from - since), base.instance().stretch().max() - needed));
  }

  /** One whose hour is over and that would leave less than a shortest stretch waits for the end. */
  private List<Instance.Meal> mealsAhead() {
    List<Instance.Meal> all = base.instance().meals();
    int passed = stand.past().stream().flatMap(past -> mealOf(past).stream()).reduce(0, Math::max);
    int soonest = running.map(Running::earliest).orElse(worked > 0 ? from : from + 3 * grid);
    List<Instance.Meal> ahead = new ArrayList<>();
    for (Instance.Meal meal : all.subList(passed, all.size())) {
      boolean inTime = soonest <= meal.to() && meal.from() + meal.minutes() < end;
      if (inTime || soonest + meal.minutes() + base.instance().stretch().min() <= end) {
        int latest = Math.max(meal.to(), soonest);
        ahead.add(new Instance.Meal(Math.max(meal.from(), from), latest, meal.minutes()));
      }
    }
    return ahead;
  }

  /**
   * Which meal a break was, counted from 1, if it was one: nearer in length to a meal than to an
   * ordinary break, it is the last that was due by then, however late it was held.
   */
  Optional<Integer> mealOf(Stand.Past past) {
    if (!past.isBreak()) {
      return Optional.empty();
    }
    long start = past.start().toMinutes();
    long length =
        past.planned()
            .or(() -> past.end().map(e -> e.minus(past.start())))
            .orElse(Duration.ZERO)
            .toMinutes();
    List<Instance.Meal> all = base.instance().meals();
    for (int number = all.size(); number > 0; number--) {
      Instance.Meal meal = all.get(number - 1);
      if (start >= meal.from() - meal.minutes()) {
        boolean isLong = 2 * length > meal.minutes() + base.instance().breakMinutes();
        return Optional.of(number).filter(n -> isLong || length >= meal.minutes());
      }
    }
    return Optional.empty();
  }

  private void tie(Set<String> movable) {
    for (Wishes.Pin pin : base.brief().wishes().pins()) {
      tie(pin.exercise(), base.brief().offset(pin.at()), movable);
    }
    for (OwnItem item : base.brief().ownItems()) {
      item.at().ifPresent(at -> tie(item.id(), base.brief().offset(at), movable));
    }
  }

  private void tie(String id, Duration at, Set<String> movable) {
    int minute = (int) at.toMinutes();
    if (!done.contains(id) && !isRunning(id)) {
      boolean holds = minute >= from && minute < end && !movable.contains(id);
      (holds ? tied : untied).put(id, minute);
    }
  }

  private int up(int minutes) {
    return (minutes + grid - 1) / grid * grid;
  }
}
