package org.arcwright.compose.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * Instances as a brief would lead to: a day that opens, explores, sorts, decides and closes, on a
 * grid of five minutes. All numbers are made up, but of a likely size.
 */
final class Workshops {
  /** What the exercises of a phase are like; the share is of the exercise minutes, in per cent. */
  private record Part(
      String name,
      String kind,
      int share,
      int energy,
      List<Integer> usual,
      String need,
      String yield) {}

  private static final List<Part> PARTS =
      List.of(
          new Part("open", "ICEBREAKER", 10, 36, List.of(5, 10, 10, 15), "", "introductions"),
          new Part("explore", "DIVERGENT", 30, 32, List.of(15, 20, 25, 30), "", "idea-pool"),
          new Part("sort", "CONVERGENT", 25, 26, List.of(10, 15, 20, 30), "idea-pool", "shortlist"),
          new Part("decide", "DECISION", 20, 28, List.of(10, 15, 20, 25), "shortlist", "decision"),
          new Part("close", "REFLECTION", 15, 22, List.of(5, 10, 15, 20), "", "takeaways"));

  private static final List<String> PRODUCTS =
      List.of("introductions", "idea-pool", "shortlist", "decision", "takeaways", "facts", "plan");
  private static final List<String> FORMATS = List.of("SOLO", "PAIRS", "SMALL_GROUPS", "PLENARY");
  private static final int GRID = 5;
  private static final int BREAK = 10;
  private static final int BUFFER = 15;
  private static final int LONGEST = 60;

  private final SplittableRandom random;

  private Workshops(long seed) {
    random = new SplittableRandom(seed);
  }

  static Instance of(int candidates, int cap, long seed) {
    return new Workshops(seed).draft(candidates, cap).build();
  }

  private Draft draft(int candidates, int cap) {
    List<Meal> meals = meals(cap);
    int rest = cap - meals.stream().mapToInt(Meal::minutes).sum();
    int minutes = rest * LONGEST / (LONGEST + BREAK) * 100 / (100 + BUFFER);
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < candidates; i++) {
      all.add(candidate(i, PARTS.get(i % PARTS.size())));
    }
    return new Draft(GRID, cap)
        .curve(IntStream.range(0, cap / GRID).map(this::curve).boxed().toList())
        .stretch(30, LONGEST)
        .breakMinutes(BREAK)
        .meals(meals)
        .bufferPercent(BUFFER)
        .products(PRODUCTS)
        .phases(PARTS.stream().map(part -> phase(part, minutes)).toList())
        .candidates(all)
        .weights(new Weights(1, 10, 60, 30, 5, 20, 2));
  }

  /** From five hours on there is lunch after some two and a half, from twelve on supper. */
  private static List<Meal> meals(int cap) {
    List<Meal> meals = new ArrayList<>();
    if (cap >= 300) {
      meals.add(new Meal(150, 210, 45));
    }
    if (cap >= 720) {
      meals.add(new Meal(480, 560, 60));
    }
    return meals;
  }

  /** Lively at first, calmer by the hour, brisk again every two hours. */
  private int curve(int cell) {
    int minute = cell * GRID;
    return 34 - minute / 60 + (minute % 120 < 30 ? 3 : 0);
  }

  private static Phase phase(Part part, int minutes) {
    int target = minutes * part.share / 100;
    int least = Math.max(GRID, onGrid(target / 2));
    int most = Math.max(least + 2 * GRID, onGrid(target * 8 / 5));
    Set<String> kinds =
        part.name.equals("decide") ? Set.of(part.kind, "CONVERGENT") : Set.of(part.kind);
    return new Phase(
        part.name,
        kinds,
        new Bounds(1, Math.max(2, most / 10)),
        new Bounds(least, most),
        target,
        List.of(part.yield));
  }

  private Candidate candidate(int number, Part part) {
    int usual = part.usual.get(random.nextInt(part.usual.size()));
    List<Integer> lengths = new ArrayList<>();
    List<Integer> lengthCosts = new ArrayList<>();
    int shorter = random.nextInt(2);
    int longer = random.nextInt(3);
    for (int step = -shorter; step <= longer; step++) {
      if (usual + step * GRID >= GRID) {
        lengths.add(usual + step * GRID);
        lengthCosts.add(Math.abs(step) * 4);
      }
    }
    List<String> needs = new ArrayList<>();
    List<String> yields = new ArrayList<>();
    if (!part.need.isEmpty() && chance(75)) {
      needs.add(part.need);
    }
    if (chance(6)) {
      needs.add("facts");
    }
    if (chance(75)) {
      yields.add(part.yield);
    }
    if (chance(10)) {
      yields.add(chance(50) ? "facts" : "plan");
    }
    return new Candidate(
        part.name + "-" + number,
        part.kind,
        lengths,
        lengthCosts,
        Math.max(10, Math.min(50, part.energy + random.nextInt(-10, 11))),
        FORMATS.get(random.nextInt(FORMATS.size())),
        needs,
        yields,
        random.nextInt(41));
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private static int onGrid(int minutes) {
    return minutes / GRID * GRID;
  }
}
