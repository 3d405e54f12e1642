package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * Instances that no brief would lead to, made to reach every corner of the problem: kinds shared by
 * phases, chains of needs, meals as long as breaks, bounds turned round, wishes that name nobody,
 * prices of zero and many equal costs.
 */
final class Wild {
  /** How large an instance is; cells count the cap, both ends of a range are included. */
  record Size(Bounds candidates, Bounds cells, Bounds phases, int longestCells) {}

  private static final int KINDS = 3;
  private static final int FORMATS = 3;

  private final SplittableRandom random;
  private final int grid;
  private final int cells;
  private final int stretch;
  private final int longest;
  private final int phases;
  private final int candidates;
  private final List<String> products;
  private final boolean plain;

  private Wild(Size size, long seed) {
    random = new SplittableRandom(seed);
    grid = List.of(5, 5, 10, 15, 1).get(random.nextInt(5));
    cells = in(size.cells);
    stretch = Math.min(cells, between(2, 7));
    longest = Math.min(stretch, size.longestCells);
    phases = in(size.phases);
    candidates = Math.max(phases, in(size.candidates));
    products = names("product", between(0, 3));
    plain = chance(20);
  }

  static Instance of(Size size, long seed) {
    return new Wild(size, seed).instance();
  }

  private Instance instance() {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < candidates; i++) {
      all.add(candidate(i));
    }
    List<Phase> arc = new ArrayList<>();
    for (int i = 0; i < phases; i++) {
      arc.add(phase(i));
    }
    int breakCells = chance(20) ? 0 : between(1, 2);
    return new Draft(grid, cells * grid)
        .curve(random.ints(cells, 10, 51).boxed().toList())
        .stretch(between(0, stretch + (chance(10) ? 3 : 0)) * grid, stretch * grid)
        .breakMinutes(breakCells * grid)
        .meals(meals(breakCells))
        .bufferPercent(List.of(0, 0, 10, 15, 37).get(random.nextInt(5)))
        .products(products)
        .initial(chance(25) ? some(products, 50) : List.of())
        .phases(arc)
        .candidates(all)
        .include(include())
        .pins(pins())
        .weights(weights())
        .build();
  }

  private Candidate candidate(int number) {
    Set<Integer> lengths = new TreeSet<>();
    int count = between(1, 3);
    while (lengths.size() < Math.min(count, longest)) {
      lengths.add(between(1, longest) * grid);
    }
    List<Integer> lengthCosts = new ArrayList<>();
    lengths.forEach(length -> lengthCosts.add(plain ? 0 : random.nextInt(8)));
    List<String> yields = some(products, 45);
    List<String> needs = chance(35) ? some(products, 30) : new ArrayList<>();
    if (!chance(10)) {
      needs.removeAll(yields); // what it yields itself it cannot wait for
    }
    return new Candidate(
        "exercise-" + number,
        "kind-" + random.nextInt(KINDS),
        List.copyOf(lengths),
        lengthCosts,
        plain ? 30 : between(10, 50),
        "format-" + random.nextInt(FORMATS),
        needs,
        yields,
        plain ? 1 : random.nextInt(40));
  }

  private Phase phase(int number) {
    Set<String> kinds = new HashSet<>(some(names("kind", KINDS), 70));
    kinds.add("kind-" + random.nextInt(KINDS));
    int fewest = chance(90) ? 1 : 2;
    Bounds count = new Bounds(fewest, chance(2) ? fewest - 1 : fewest + random.nextInt(3));
    int least = chance(60) ? 0 : random.nextInt(3);
    Bounds minutes =
        new Bounds(least * grid, (chance(2) ? least - 1 : between(least + 1, cells)) * grid);
    return new Phase(
        "phase-" + number,
        kinds,
        count,
        new Bounds(minutes.min(), Math.max(0, minutes.max())),
        random.nextInt(cells * grid / phases + 1),
        chance(30) ? some(products, 30) : List.of());
  }

  private List<Meal> meals(int breakCells) {
    int count = chance(65) ? 0 : chance(75) ? 1 : 2;
    List<Meal> meals = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < count; i++) {
      from = Math.min(cells, from + between(1, Math.max(1, cells / 2)));
      int to = from + random.nextInt(7) - (chance(3) ? 7 : 0);
      int length = chance(35) && breakCells > 0 ? breakCells : between(1, 3);
      meals.add(new Meal(from * grid, Math.max(0, to) * grid, length * grid));
      from = Math.max(0, from - (chance(30) ? 2 : 0)); // windows may overlap
    }
    return meals;
  }

  private List<String> include() {
    if (!chance(25)) {
      return List.of();
    }
    return chance(4) ? List.of("nobody") : List.of(anyone());
  }

  private List<Pin> pins() {
    if (!chance(15)) {
      return List.of();
    }
    int at = chance(30) ? 0 : random.nextInt(cells) * grid;
    return List.of(new Pin(chance(4) ? "nobody" : anyone(), at));
  }

  private Weights weights() {
    return new Weights(price(2), price(10), price(60), price(40), price(6), price(30), price(4));
  }

  private int price(int most) {
    return plain || chance(25) ? 0 : between(1, most);
  }

  private String anyone() {
    return "exercise-" + random.nextInt(candidates);
  }

  private List<String> some(List<String> names, int percent) {
    List<String> some = new ArrayList<>(names);
    some.removeIf(name -> !chance(percent));
    return some;
  }

  private static List<String> names(String stem, int count) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      names.add(stem + "-" + i);
    }
    return names;
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  private int in(Bounds bounds) {
    return between(bounds.min(), bounds.max());
  }
}
