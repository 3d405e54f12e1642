package org.arcwright.compose.explain;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.instance.Instance;

/** How a wish can be asked for in a smaller measure, step by step. */
final class Steps {
  /** Times are given up by so many minutes: people keep appointments by five minutes. */
  private static final int MINUTES = 5;

  /** Nobody sits through more; a longer cap is looked for only up to twice what it was. */
  private static final int LONG_DAY = 12 * 60;

  /** Nobody works longer without a break; an own item may. Common practice, no source. */
  private static final int LONG_STRETCH = 120;

  /** The longest stretch that a brief may ask for, in minutes. */
  private static final int LONGEST_STRETCH = 300;

  private static final int MOST_OPENNESS = 3;
  private static final int MOST_PEOPLE = 1000;

  /** Group sizes that most exercises serve. Common practice, no source. */
  private static final List<Integer> HANDY_GROUPS = List.of(12, 8, 20, 6);

  private final Brief brief;
  private final Catalog catalog;
  private final int grid;

  /**
   * @param grid minutes in a cell of what the brief was reduced to
   */
  Steps(Brief brief, Catalog catalog, int grid) {
    this.brief = brief;
    this.catalog = catalog;
    this.grid = grid;
  }

  /** Whether there is anything to give up about it. */
  boolean canBeLoosened(Wish wish) {
    return canBeStruck(wish) || !of(wish).isEmpty();
  }

  /** Whether a brief may do without it. */
  static boolean canBeStruck(Wish wish) {
    return wish instanceof Wish.Include
        || wish instanceof Wish.LeaveOut
        || wish instanceof Wish.Pinned
        || wish instanceof Wish.Own
        || wish instanceof Wish.Rule
        || wish instanceof Wish.Meal;
  }

  /**
   * The wish in ever smaller measure, in one sequence for each way to give something up about it.
   * To do without it is not among them.
   */
  List<List<Wish>> of(Wish wish) {
    List<List<Wish>> ways = new ArrayList<>();
    if (wish instanceof Wish.Pinned pinned) {
      ways.add(otherStarts(pinned));
    } else if (wish instanceof Wish.Own own) {
      ways.add(otherStarts(own));
      ways.add(anyPhase(own));
    } else if (wish instanceof Wish.Meal meal) {
      ways.add(shorter(meal));
      ways.add(earlier(meal));
      ways.add(later(meal));
    } else if (wish instanceof Wish.Tools tools) {
      missingTools(tools).forEach(more -> ways.add(List.of(more)));
    } else if (wish instanceof Wish.Given given) {
      missingProducts(given).forEach(more -> ways.add(List.of(more)));
    } else if (wish instanceof Wish.People people) {
      ways.add(list(people.count() - 1, n -> new Wish.People(people.count() - n)));
      ways.add(list(mostMore(people.count()), n -> new Wish.People(people.count() + n)));
    } else {
      ways.add(figures(wish));
    }
    ways.removeIf(List::isEmpty);
    return ways;
  }

  private List<Wish> figures(Wish wish) {
    if (wish instanceof Wish.Cap cap) {
      int minutes = minutes(cap.most());
      int most = Math.min(Instance.MOST_CELLS * grid, Math.max(LONG_DAY, 2 * minutes));
      return upwards(minutes, Math.min(most, 40 * 60), n -> new Wish.Cap(Duration.ofMinutes(n)));
    }
    if (wish instanceof Wish.Stretch stretch) {
      return upwards(
          minutes(stretch.longest()),
          longestStretch(),
          n -> new Wish.Stretch(Duration.ofMinutes(n)));
    }
    if (wish instanceof Wish.Pause pause) {
      int usual = minutes(Defaults.rhythm(brief.mode()).pause());
      int from = pause.length().isZero() ? usual + 1 : minutes(pause.length());
      return downwards(from, MINUTES, n -> new Wish.Pause(Duration.ofMinutes(n)));
    }
    if (wish instanceof Wish.Buffer buffer) {
      return list(buffer.percent(), n -> new Wish.Buffer(buffer.percent() - n));
    }
    if (wish instanceof Wish.Openness openness) {
      return list(MOST_OPENNESS - openness.most(), n -> new Wish.Openness(openness.most() + n));
    }
    return List.of();
  }

  private int longestStretch() {
    int own = brief.ownItems().stream().mapToInt(item -> minutes(item.length())).max().orElse(0);
    int most = Math.min(LONGEST_STRETCH, Instance.MOST_BITS * grid);
    return Math.min(most, Math.max(LONG_STRETCH, own + MINUTES - 1));
  }

  /**
   * What stands for the wish where it does not count at all: of several, any that lets an agenda be
   * made.
   */
  List<Optional<Wish>> givenUp(Wish wish) {
    if (canBeStruck(wish)) {
      return List.of(Optional.empty());
    }
    if (wish instanceof Wish.Tools tools) {
      Set<String> all = new TreeSet<>(tools.atHand());
      all.addAll(used());
      return List.of(Optional.of(new Wish.Tools(all)));
    }
    if (wish instanceof Wish.Given given) {
      Set<String> all = new TreeSet<>(given.products());
      missingProducts(given).forEach(more -> all.addAll(more.products()));
      return List.of(Optional.of(new Wish.Given(all)));
    }
    if (wish instanceof Wish.People people) {
      return Stream.concat(Stream.of(people.count() / 2), HANDY_GROUPS.stream())
          .filter(count -> count > 0 && count != people.count())
          .map(count -> Optional.<Wish>of(new Wish.People(count)))
          .toList();
    }
    List<Wish> steps = figures(wish);
    return List.of(Optional.of(steps.get(steps.size() - 1)));
  }

  /**
   * The tools or work products that the other wish has and the first has not; none of any other.
   */
  static List<String> more(Wish wish, Wish other) {
    Set<String> more = new TreeSet<>(listed(other));
    more.removeAll(listed(wish));
    return List.copyOf(more);
  }

  /** The same wish for tools or work products without one of them. */
  static Wish without(Wish wish, String one) {
    Set<String> fewer = new TreeSet<>(listed(wish));
    fewer.remove(one);
    return wish instanceof Wish.Tools ? new Wish.Tools(fewer) : new Wish.Given(fewer);
  }

  private static Set<String> listed(Wish wish) {
    if (wish instanceof Wish.Tools tools) {
      return tools.atHand();
    }
    return wish instanceof Wish.Given given ? given.products() : Set.of();
  }

  private List<Wish> otherStarts(Wish.Pinned pinned) {
    Wishes.Pin pin = pinned.pin();
    return starts(pin.at()).stream()
        .<Wish>map(at -> new Wish.Pinned(new Wishes.Pin(pin.exercise(), at)))
        .toList();
  }

  private List<Wish> otherStarts(Wish.Own own) {
    OwnItem item = own.item();
    return item.at().map(this::starts).orElse(List.of()).stream()
        .<Wish>map(at -> new Wish.Own(with(item, item.phase(), Optional.of(at))))
        .toList();
  }

  private List<Wish> anyPhase(Wish.Own own) {
    OwnItem item = own.item();
    return item.phase().isEmpty()
        ? List.of()
        : List.of(new Wish.Own(with(item, Optional.empty(), item.at())));
  }

  private static OwnItem with(OwnItem item, Optional<String> phase, Optional<Moment> at) {
    return new OwnItem(
        item.id(), item.title(), item.length(), phase, at, item.energy(), item.format());
  }

  /** Other starts within the cap, the nearest first, the later of two. */
  private List<Moment> starts(Moment at) {
    int from = minutes(brief.offset(at));
    int cap = minutes(brief.cap());
    return IntStream.rangeClosed(1, cap / grid)
        .boxed()
        .flatMap(apart -> Stream.of(from + apart * grid, from - apart * grid))
        .filter(minute -> minute >= 0 && minute < cap)
        .map(minute -> moved(at, minute))
        .toList();
  }

  private Moment moved(Moment at, int minute) {
    Duration offset = Duration.ofMinutes(minute);
    return at instanceof Moment.Clock && brief.start().isPresent()
        ? new Moment.Clock(brief.start().get().plus(offset).toLocalTime())
        : new Moment.After(offset);
  }

  private static List<Wish> shorter(Wish.Meal wish) {
    Meal meal = wish.meal();
    return downwards(
        minutes(meal.length()),
        3 * MINUTES,
        n -> new Wish.Meal(new Meal(meal.earliest(), meal.latest(), Duration.ofMinutes(n))));
  }

  private static List<Wish> earlier(Wish.Meal wish) {
    Meal meal = wish.meal();
    return downwards(
        minutes(meal.earliest()),
        0,
        n -> new Wish.Meal(new Meal(Duration.ofMinutes(n), meal.latest(), meal.length())));
  }

  private List<Wish> later(Wish.Meal wish) {
    Meal meal = wish.meal();
    int latest = minutes(brief.cap().minus(meal.length())) - MINUTES;
    return upwards(
        minutes(meal.latest()),
        latest,
        n -> new Wish.Meal(new Meal(meal.earliest(), Duration.ofMinutes(n), meal.length())));
  }

  private List<Wish.Tools> missingTools(Wish.Tools tools) {
    List<Wish.Tools> more = new ArrayList<>();
    for (String tool : used()) {
      if (!tools.atHand().contains(tool)) {
        Set<String> all = new TreeSet<>(tools.atHand());
        all.add(tool);
        more.add(new Wish.Tools(all));
      }
    }
    return more;
  }

  /** The tools that a brief's exercises may use. */
  Set<String> atHand() {
    if (!brief.tools().isEmpty()) {
      return brief.tools();
    }
    Set<String> usual = new TreeSet<>();
    for (Tool tool : catalog.tools().values()) {
      if (tool.modes().contains(brief.mode())) {
        usual.add(tool.id());
      }
    }
    return usual;
  }

  /** The tools that exercises of the catalog use in the brief's mode. */
  private Set<String> used() {
    Set<String> used = new TreeSet<>();
    for (Exercise exercise : catalog.exercises().values()) {
      used.addAll(exercise.in(brief.mode()).tools());
    }
    return used;
  }

  /** What could be brought along; not the goal itself. */
  private List<Wish.Given> missingProducts(Wish.Given given) {
    Optional<Goal> goal = catalog.goal(brief.goal());
    Set<String> products = new TreeSet<>(catalog.products().keySet());
    products.removeAll(given.products());
    goal.ifPresent(known -> products.removeAll(known.given()));
    goal.ifPresent(known -> products.removeAll(known.yields()));
    List<Wish.Given> more = new ArrayList<>();
    for (String product : products) {
      Set<String> all = new TreeSet<>(given.products());
      all.add(product);
      more.add(new Wish.Given(all));
    }
    return more;
  }

  /** Up to twice as many and ten: a group may be joined by another. */
  private static int mostMore(int people) {
    return Math.min(MOST_PEOPLE - people, people + 10);
  }

  private static List<Wish> list(int size, IntFunction<Wish> step) {
    return IntStream.rangeClosed(1, size).mapToObj(step).toList();
  }

  /** Multiples of five minutes over {@code from}, to {@code most}. */
  private static List<Wish> upwards(int from, int most, IntFunction<Wish> step) {
    int first = from / MINUTES + 1;
    return IntStream.rangeClosed(first, most / MINUTES)
        .mapToObj(n -> step.apply(n * MINUTES))
        .toList();
  }

  /** Multiples of five minutes under {@code from}, to {@code least}. */
  private static List<Wish> downwards(int from, int least, IntFunction<Wish> step) {
    int first = (from - 1) / MINUTES;
    return IntStream.iterate(first, n -> n * MINUTES >= least, n -> n - 1)
        .mapToObj(n -> step.apply(n * MINUTES))
        .toList();
  }

  private static int minutes(Duration duration) {
    return (int) duration.toMinutes();
  }
}
