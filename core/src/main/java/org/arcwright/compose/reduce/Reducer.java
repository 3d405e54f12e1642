package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Product;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.jspecify.annotations.Nullable;

/**
 * Reduces a brief and a catalog to an {@link Instance}. Stateless; the same brief and catalog give
 * the same instance everywhere, whatever the locale or the time zone of the machine. Time grows
 * with the number of exercises, about a microsecond for each.
 */
public final class Reducer {
  /** So many exercises are read between two questions whether to stop. */
  private static final int BETWEEN_QUESTIONS = 256;

  private final Brief brief;
  private final Catalog catalog;
  private final Goal goal;
  private final Timing timing;
  private final OwnItems own;
  private final Set<String> given;
  private final TreeMap<String, Refusal> leftOut = new TreeMap<>();

  private Reducer(Brief brief, Catalog catalog) {
    this.brief = brief;
    this.catalog = catalog;
    this.goal =
        catalog
            .goal(brief.goal())
            .orElseThrow(
                () -> Known.unknown("goal", brief.goal(), catalog.goals().keySet(), "goal"));
    Known.check("tools", brief.tools(), catalog.tools().keySet(), "tool in the catalog");
    Known.check("given", brief.given(), catalog.products().keySet(), "work product in the catalog");
    this.timing = Timing.of(brief);
    this.own = new OwnItems(brief.ownItems(), goal, catalog, timing);
    checkWishes();
    this.given = new TreeSet<>(goal.given());
    given.addAll(brief.given());
  }

  private void checkWishes() {
    Set<String> known = catalog.exercises().keySet();
    Wishes wishes = brief.wishes();
    Known.check("include", wishes.include(), known, "exercise in the catalog");
    Known.check("leave-out", wishes.leaveOut(), known, "exercise in the catalog");
    Known.check("used-last-time", wishes.usedLastTime(), known, "exercise in the catalog");
    Known.check(
        "pin",
        wishes.pins().stream().map(Wishes.Pin::exercise).toList(),
        known,
        "exercise in the catalog");
  }

  /**
   * Reduces them.
   *
   * @param stop asked now and then; once it says true, all exercises are passed over
   * @throws InvalidValueException if the brief names what the catalog does not have, or times that
   *     cannot be planned
   */
  public static Reduction reduce(Brief brief, Catalog catalog, BooleanSupplier stop) {
    return new Reducer(brief, catalog).reduce(stop);
  }

  private Reduction reduce(BooleanSupplier stop) {
    List<Allowed> allowed = new ArrayList<>();
    boolean complete = read(allowed, stop);
    if (!complete) {
      allowed.clear();
    }
    dropUnreachable(allowed);
    Set<String> products = relevant(allowed);
    ExerciseCost cost = new ExerciseCost(brief, new Purpose(goal, given, allowed));
    Placement placement = new Placement(goal.arc(), given, allowed);
    List<Candidate> candidates = new ArrayList<>(allowed.size());
    if (!candidates(allowed, products, placement, cost, candidates, stop)) {
      candidates.clear();
      complete = false;
    }
    Supply supply = new Supply(candidates, timing.grid(), timing.stretch().max());
    leftOut.putAll(own.tooLong());
    List<Candidate> ownCandidates = own.candidates();
    if (!ownCandidates.isEmpty()) {
      candidates.addAll(ownCandidates);
      candidates.sort(Comparator.comparing(Candidate::id));
    }
    int working = WorkingTime.minutes(timing, brief.bufferPercent()) - own.minutes();
    Arc arc = new Arc(goal.arc(), placement, given, timing, supply, Math.max(0, working));
    HouseRules house = new HouseRules(allowed, brief.group().count(), stop);
    Instance.Rules rules = house.of(catalog.rules().values());
    Instance instance =
        new Instance(
            timing.grid(),
            timing.cap(),
            curve(),
            timing.stretch(),
            timing.breakMinutes(),
            timing.meals(),
            brief.bufferPercent(),
            List.copyOf(products),
            only(given, products),
            arc.phases(own),
            candidates,
            include(),
            timing.pins(),
            rules,
            ExchangeRates.weights(timing.breakMinutes()));
    return new Reduction(
        brief,
        catalog,
        goal,
        instance,
        leftOut,
        id -> costParts(id, allowed, cost),
        complete && house.complete());
  }

  private boolean read(List<Allowed> allowed, BooleanSupplier stop) {
    Admission admission = new Admission(brief, goal, catalog);
    int people = brief.group().count();
    int read = 0;
    for (Exercise exercise : catalog.exercises().values()) {
      if (read++ % BETWEEN_QUESTIONS == 0 && stop.getAsBoolean()) {
        return false;
      }
      Refusal refusal = admission.refusal(exercise);
      if (refusal == null) {
        Lengths lengths =
            Lengths.of(exercise.minutes(people), timing.grid(), timing.stretch().max());
        refusal = tooLong(lengths);
        if (refusal == null) {
          allowed.add(Allowed.of(exercise, people, lengths));
        }
      }
      if (refusal != null) {
        leftOut.put(exercise.id(), refusal);
      }
    }
    return true;
  }

  private @Nullable Refusal tooLong(Lengths lengths) {
    if (lengths.minutes().isEmpty()) {
      return overTheStretch("too long: takes at least", lengths.shortest(), timing);
    }
    if (lengths.shortest() > timing.cap()) {
      return Refusal.by(
          "cap",
          "too long: takes at least "
              + lengths.shortest()
              + " minutes; the workshop has "
              + timing.cap()
              + " in all");
    }
    return null;
  }

  static Refusal overTheStretch(String takes, int minutes, Timing timing) {
    return Refusal.by(
        "rhythm.stretch",
        takes
            + " "
            + minutes
            + " minutes; without a break people work at most "
            + timing.stretch().max());
  }

  private void dropUnreachable(List<Allowed> allowed) {
    Map<String, String> missing = Reach.missing(given, allowed);
    if (!missing.isEmpty()) {
      allowed.removeIf(entry -> missing.containsKey(entry.exercise().id()));
    }
    missing.forEach(
        (id, product) ->
            leftOut.put(
                id, Refusal.by("given", "needs what nothing here leaves: the " + title(product))));
  }

  private String title(String product) {
    Product known = catalog.products().get(product);
    return known == null ? product : known.title();
  }

  /** The products that an exercise needs or a phase must leave; no other can make a difference. */
  private Set<String> relevant(List<Allowed> allowed) {
    Set<String> products = new TreeSet<>();
    goal.arc().forEach(phase -> products.addAll(phase.yields()));
    Set<String> needs = new HashSet<>();
    allowed.forEach(entry -> needs.addAll(entry.needs()));
    products.addAll(needs);
    return products;
  }

  private static List<CostPart> costParts(String id, List<Allowed> allowed, ExerciseCost cost) {
    for (Allowed entry : allowed) {
      if (entry.exercise().id().equals(id)) {
        return cost.parts(entry);
      }
    }
    return List.of();
  }

  private boolean candidates(
      List<Allowed> allowed,
      Set<String> products,
      Placement placement,
      ExerciseCost cost,
      List<Candidate> candidates,
      BooleanSupplier stop) {
    Set<String> named = new HashSet<>(products);
    for (Allowed entry : allowed) {
      if (candidates.size() % BETWEEN_QUESTIONS == 0 && stop.getAsBoolean()) {
        return false;
      }
      Exercise exercise = entry.exercise();
      candidates.add(
          new Candidate(
              exercise.id(),
              placement.kind(entry),
              entry.lengths().minutes(),
              entry.lengths().costs(),
              10 * exercise.energy(),
              entry.format().word(),
              entry.needs(),
              only(entry.yields(), named),
              cost.of(entry)));
    }
    return true;
  }

  private static List<String> only(Collection<String> words, Set<String> wanted) {
    List<String> found = new ArrayList<>(words.size());
    for (String word : words) {
      if (wanted.contains(word)) {
        found.add(word);
      }
    }
    return found;
  }

  /** The curve in the middle of each cell. */
  private List<Integer> curve() {
    int cells = timing.cap() / timing.grid();
    List<Integer> curve = new ArrayList<>(cells);
    for (int cell = 0; cell < cells; cell++) {
      curve.add(brief.curve().at(2L * cell + 1, 2L * cells));
    }
    return curve;
  }

  private List<String> include() {
    Set<String> include = new TreeSet<>(brief.wishes().include());
    include.addAll(own.ids());
    return List.copyOf(include);
  }
}
